import { fromSi, type PlainNumber, type Quantity, toSi, type UnitTable } from './quantity.js';

/** A coefficient of linear thermal expansion. */
export type ThermalExpansion = Quantity<'thermal expansion'>;

/** Units in which a thermal expansion is written, each as an exact ratio to the SI unit. */
export const thermalExpansionUnits = {
  '1/K': [1, 1],
  '1/degC': [1, 1],
  '1e-6/K': [1, 1000000],
  'um/(m K)': [1, 1000000],
  '1/degF': [9, 5],
  '1e-6/degF': [9, 5000000],
} as const satisfies UnitTable;

/** A thermal expansion given in strain per kelvin. */
export const perK = (value: PlainNumber): ThermalExpansion =>
  toSi(value, thermalExpansionUnits['1/K']) as ThermalExpansion;
/** The number of strain per kelvin in a thermal expansion. */
export const inPerK = (quantity: ThermalExpansion): number => fromSi(quantity, thermalExpansionUnits['1/K']);

/** A thermal expansion given in strain per Fahrenheit degree. */
export const perDegF = (value: PlainNumber): ThermalExpansion =>
  toSi(value, thermalExpansionUnits['1/degF']) as ThermalExpansion;
/** The number of strain per Fahrenheit degree in a thermal expansion. */
export const inPerDegF = (quantity: ThermalExpansion): number => fromSi(quantity, thermalExpansionUnits['1/degF']);
