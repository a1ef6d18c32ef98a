import { fromSi, type PlainNumber, type Quantity, toSi, type UnitTable } from './quantity.js';

/** Pressure times the square root of hole diameter: the screening figure for leaks. */
export type LeakSeverity = Quantity<'leak severity'>;

/** Units in which a leak severity is written, each as an exact ratio to the SI unit. */
export const leakSeverityUnits = {
  'Pa m^(1/2)': [1, 1],
  'MN/m^(3/2)': [1000000, 1],
  'MPa m^(1/2)': [1000000, 1],
} as const satisfies UnitTable;

/** A leak severity given in meganewtons per metre to the power 3/2. */
export const MNPerM32 = (value: PlainNumber): LeakSeverity =>
  toSi(value, leakSeverityUnits['MN/m^(3/2)']) as LeakSeverity;
/** The number of meganewtons per metre to the power 3/2 in a leak severity. */
export const inMNPerM32 = (quantity: LeakSeverity): number => fromSi(quantity, leakSeverityUnits['MN/m^(3/2)']);
