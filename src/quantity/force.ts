import { fromSi, type PlainNumber, type Quantity, toSi, type UnitTable } from './quantity.js';

/** A force: end load, plug force, strap tension. */
export type Force = Quantity<'force'>;

/** Units in which a force is written, each as an exact ratio to the SI unit. */
export const forceUnits = {
  N: [1, 1],
  kN: [1000, 1],
  MN: [1000000, 1],
  lbf: [44482216152605, 10000000000000],
} as const satisfies UnitTable;

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
