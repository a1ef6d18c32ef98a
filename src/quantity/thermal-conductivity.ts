import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { thermalConductivityUnits } from './units/thermal-conductivity.js';

/** How well a material conducts heat. */
export type ThermalConductivity = Quantity<'thermal conductivity'>;

/** A thermal conductivity given in watts per metre kelvin. */
export const WPerMK = (value: PlainNumber): ThermalConductivity =>
  toSi(value, thermalConductivityUnits['W/(m K)']) as ThermalConductivity;
/** The number of watts per metre kelvin in a thermal conductivity. */
export const inWPerMK = (quantity: ThermalConductivity): number =>
  fromSi(quantity, thermalConductivityUnits['W/(m K)']);

/** A thermal conductivity given in milliwatts per metre kelvin. */
export const mWPerMK = (value: PlainNumber): ThermalConductivity =>
  toSi(value, thermalConductivityUnits['mW/(m K)']) as ThermalConductivity;
/** The number of milliwatts per metre kelvin in a thermal conductivity. */
export const inMWPerMK = (quantity: ThermalConductivity): number =>
  fromSi(quantity, thermalConductivityUnits['mW/(m K)']);
