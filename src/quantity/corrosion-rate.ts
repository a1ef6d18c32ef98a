import { fromSi, type PlainNumber, type Quantity, toSi, type UnitTable } from './quantity.js';

/** A loss of metal, or a growth in length, per time. A year is 365.25 days. */
export type CorrosionRate = Quantity<'corrosion rate'>;

/** Units in which a corrosion rate is written, each as an exact ratio to the SI unit. */
export const corrosionRateUnits = {
  'm/s': [1, 1],
  'mm/year': [1, 31557600000],
  'um/year': [1, 31557600000000],
  'in/year': [254, 315576000000],
  'mil/year': [254, 315576000000000],
} as const satisfies UnitTable;

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
