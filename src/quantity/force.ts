import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { forceUnits } from './units/force.js';

/** A force: end load, plug force, strap tension. */
export type Force = Quantity<'force'>;

/** A force given in newtons. */
export const N = (value: PlainNumber): Force => toSi(value, forceUnits.N) as Force;
/** The number of newtons in a force. */
export const inN = (quantity: Force): number => fromSi(quantity, forceUnits.N);

/** A force given in kilonewtons. */
export const kN = (value: PlainNumber): Force => toSi(value, forceUnits.kN) as Force;
/** The number of kilonewtons in a force. */
export const inKN = (quantity: Force): number => fromSi(quantity, forceUnits.kN);

/** A force given in pounds force. */
export const lbf = (value: PlainNumber): Force => toSi(value, forceUnits.lbf) as Force;
/** The number of pounds force in a force. */
export const inLbf = (quantity: Force): number => fromSi(quantity, forceUnits.lbf);

/** A force given in meganewtons. */
export const MN = (value: PlainNumber): Force => toSi(value, forceUnits.MN) as Force;
/** The number of meganewtons in a force. */
export const inMN = (quantity: Force): number => fromSi(quantity, forceUnits.MN);
