import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { leakSeverityUnits } from './units/leak-severity.js';

/** Pressure times the square root of hole diameter: the screening figure for leaks. */
export type LeakSeverity = Quantity<'leak severity'>;

/** A leak severity given in meganewtons per metre to the power 3/2. */
export const MNPerM32 = (value: PlainNumber): LeakSeverity =>
  toSi(value, leakSeverityUnits['MN/m^(3/2)']) as LeakSeverity;
/** The number of meganewtons per metre to the power 3/2 in a leak severity. */
export const inMNPerM32 = (quantity: LeakSeverity): number => fromSi(quantity, leakSeverityUnits['MN/m^(3/2)']);

/** A leak severity given in pascals times the square root of a metre. */
export const PaRootM = (value: PlainNumber): LeakSeverity =>
  toSi(value, leakSeverityUnits['Pa m^(1/2)']) as LeakSeverity;
/** The number of pascals times the square root of a metre in a leak severity. */
export const inPaRootM = (quantity: LeakSeverity): number => fromSi(quantity, leakSeverityUnits['Pa m^(1/2)']);
