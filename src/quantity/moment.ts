import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { momentUnits } from './units/moment.js';

/** A moment of force: bending, torsion, fastener torque. */
export type Moment = Quantity<'moment'>;

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

/** A moment given in kilonewton metres. */
export const kNm = (value: PlainNumber): Moment => toSi(value, momentUnits['kN m']) as Moment;
/** The number of kilonewton metres in a moment. */
export const inKNm = (quantity: Moment): number => fromSi(quantity, momentUnits['kN m']);

/** A moment given in pound-force inches. */
export const lbfIn = (value: PlainNumber): Moment => toSi(value, momentUnits['lbf in']) as Moment;
/** The number of pound-force inches in a moment. */
export const inLbfIn = (quantity: Moment): number => fromSi(quantity, momentUnits['lbf in']);
