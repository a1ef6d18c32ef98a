import { fromSi, type PlainNumber, type Quantity, toSi, type UnitTable } from './quantity.js';

/** A moment of force: bending, torsion, fastener torque. */
export type Moment = Quantity<'moment'>;

/** Units in which a moment is written, each as an exact ratio to the SI unit. */
export const momentUnits = {
  'N m': [1, 1],
  'N mm': [1, 1000],
  'kN m': [1000, 1],
  'lbf in': [1129848290276167, 10000000000000000],
  'lbf ft': [3389544870828501, 2500000000000000],
} as const satisfies UnitTable;

/** A moment given in newton metres. */
export const Nm = (value: PlainNumber): Moment => toSi(value, momentUnits['N m']) as Moment;
/** The number of newton metres in a moment. */
export const inNm = (quantity: Moment): number => fromSi(quantity, momentUnits['N m']);

/** A moment given in newton millimetres. */
export const Nmm = (value: PlainNumber): Moment => toSi(value, momentUnits['N mm']) as Moment;
/** The number of newton millimetres in a moment. */
export const inNmm = (quantity: Moment): number => fromSi(quantity, momentUnits['N mm']);

/** A moment given in pound-force feet. */
export const lbfFt = (value: PlainNumber): Moment => toSi(value, momentUnits['lbf ft']) as Moment;
/** The number of pound-force feet in a moment. */
export const inLbfFt = (quantity: Moment): number => fromSi(quantity, momentUnits['lbf ft']);
