import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { thermalExpansionUnits } from './units/thermal-expansion.js';

/** A coefficient of linear thermal expansion. */
export type ThermalExpansion = Quantity<'thermal expansion'>;

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

/** A thermal expansion given in millionths per kelvin. */
export const microPerK = (value: PlainNumber): ThermalExpansion =>
  toSi(value, thermalExpansionUnits['1e-6/K']) as ThermalExpansion;
/** The number of millionths per kelvin in a thermal expansion. */
export const inMicroPerK = (quantity: ThermalExpansion): number => fromSi(quantity, thermalExpansionUnits['1e-6/K']);

/** A thermal expansion given in millionths per Fahrenheit degree. */
export const microPerDegF = (value: PlainNumber): ThermalExpansion =>
  toSi(value, thermalExpansionUnits['1e-6/degF']) as ThermalExpansion;
/** The number of millionths per Fahrenheit degree in a thermal expansion. */
export const inMicroPerDegF = (quantity: ThermalExpansion): number =>
  fromSi(quantity, thermalExpansionUnits['1e-6/degF']);
