import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { corrosionRateUnits } from './units/corrosion-rate.js';

/** A loss of metal, or a growth in length, per time. A year is 365.25 days. */
export type CorrosionRate = Quantity<'corrosion rate'>;

/** A corrosion rate given in millimetres per year. */
export const mmPerYear = (value: PlainNumber): CorrosionRate =>
  toSi(value, corrosionRateUnits['mm/year']) as CorrosionRate;
/** The number of millimetres per year in a corrosion rate. */
export const inMmPerYear = (quantity: CorrosionRate): number => fromSi(quantity, corrosionRateUnits['mm/year']);

/** A corrosion rate given in thousandths of an inch per year. */
export const milPerYear = (value: PlainNumber): CorrosionRate =>
  toSi(value, corrosionRateUnits['mil/year']) as CorrosionRate;
/** The number of thousandths of an inch per year in a corrosion rate. */
export const inMilPerYear = (quantity: CorrosionRate): number => fromSi(quantity, corrosionRateUnits['mil/year']);

/** A corrosion rate given in metres per second. */
export const mPerS = (value: PlainNumber): CorrosionRate => toSi(value, corrosionRateUnits['m/s']) as CorrosionRate;
/** The number of metres per second in a corrosion rate. */
export const inMPerS = (quantity: CorrosionRate): number => fromSi(quantity, corrosionRateUnits['m/s']);

/** A corrosion rate given in micrometres per year. */
export const umPerYear = (value: PlainNumber): CorrosionRate =>
  toSi(value, corrosionRateUnits['um/year']) as CorrosionRate;
/** The number of micrometres per year in a corrosion rate. */
export const inUmPerYear = (quantity: CorrosionRate): number => fromSi(quantity, corrosionRateUnits['um/year']);

/** A corrosion rate given in inches per year. */
export const inchPerYear = (value: PlainNumber): CorrosionRate =>
  toSi(value, corrosionRateUnits['in/year']) as CorrosionRate;
/** The number of inches per year in a corrosion rate. */
export const inInchPerYear = (quantity: CorrosionRate): number => fromSi(quantity, corrosionRateUnits['in/year']);
