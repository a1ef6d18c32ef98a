import { fromSi, type PlainNumber, type Quantity, toSi, type UnitTable } from './quantity.js';

/** Conversion per time. */
export type RateConstant = Quantity<'rate constant'>;

/** Units in which a rate constant is written, each as an exact ratio to the SI unit. */
export const rateConstantUnits = {
  '1/s': [1, 1],
  '1/min': [1, 60],
  '1/h': [1, 3600],
} as const satisfies UnitTable;

/** A rate constant given in parts of one per second. */
export const perS = (value: PlainNumber): RateConstant => toSi(value, rateConstantUnits['1/s']) as RateConstant;
/** The number of parts of one per second in a rate constant. */
export const inPerS = (quantity: RateConstant): number => fromSi(quantity, rateConstantUnits['1/s']);

/** A rate constant given in parts of one per minute. */
export const perMin = (value: PlainNumber): RateConstant => toSi(value, rateConstantUnits['1/min']) as RateConstant;
/** The number of parts of one per minute in a rate constant. */
export const inPerMin = (quantity: RateConstant): number => fromSi(quantity, rateConstantUnits['1/min']);
