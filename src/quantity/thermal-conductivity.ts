import { fromSi, type PlainNumber, type Quantity, toSi, type UnitTable } from './quantity.js';

/** How well a material conducts heat. */
export type ThermalConductivity = Quantity<'thermal conductivity'>;

/** Units in which a thermal conductivity is written, each as an exact ratio to the SI unit. */
export const thermalConductivityUnits = {
  'W/(m K)': [1, 1],
  'mW/(m K)': [1, 1000],
} as const satisfies UnitTable;

/** A thermal conductivity given in watts per metre kelvin. */
export const WPerMK = (value: PlainNumber): ThermalConductivity =>
  toSi(value, thermalConductivityUnits['W/(m K)']) as ThermalConductivity;
/** The number of watts per metre kelvin in a thermal conductivity. */
export const inWPerMK = (quantity: ThermalConductivity): number =>
  fromSi(quantity, thermalConductivityUnits['W/(m K)']);
