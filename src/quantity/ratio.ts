import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { ratioUnits } from './units/ratio.js';

/** A ratio of two like quantities: overlap, fibre fraction, humidity, depth over wall. */
export type Ratio = Quantity<'ratio'>;

/** A ratio given in parts of one. */
export const fraction = (value: PlainNumber): Ratio => toSi(value, ratioUnits['1']) as Ratio;
/** The number of parts of one in a ratio. */
export const inFraction = (quantity: Ratio): number => fromSi(quantity, ratioUnits['1']);

/** A ratio given in per cent. */
export const percent = (value: PlainNumber): Ratio => toSi(value, ratioUnits['%']) as Ratio;
/** The number of per cent in a ratio. */
export const inPercent = (quantity: Ratio): number => fromSi(quantity, ratioUnits['%']);
