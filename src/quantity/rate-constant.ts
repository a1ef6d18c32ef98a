import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { rateConstantUnits } from './units/rate-constant.js';

/** Conversion per time. */
export type RateConstant = Quantity<'rate constant'>;

/** A rate constant given in parts of one per second. */
export const perS = (value: PlainNumber): RateConstant => toSi(value, rateConstantUnits['1/s']) as RateConstant;
/** The number of parts of one per second in a rate constant. */
export const inPerS = (quantity: RateConstant): number => fromSi(quantity, rateConstantUnits['1/s']);

/** A rate constant given in parts of one per minute. */
export const perMin = (value: PlainNumber): RateConstant => toSi(value, rateConstantUnits['1/min']) as RateConstant;
/** The number of parts of one per minute in a rate constant. */
export const inPerMin = (quantity: RateConstant): number => fromSi(quantity, rateConstantUnits['1/min']);

/** A rate constant given in one per hour. */
export const perH = (value: PlainNumber): RateConstant => toSi(value, rateConstantUnits['1/h']) as RateConstant;
/** The number of one per hour in a rate constant. */
export const inPerH = (quantity: RateConstant): number => fromSi(quantity, rateConstantUnits['1/h']);
