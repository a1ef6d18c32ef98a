import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { lineMomentUnits } from './units/line-moment.js';

/** Bending moment for each width of a laminate. */
export type LineMoment = Quantity<'line moment'>;

/** A line moment given in newton metres per metre. */
export const NmPerM = (value: PlainNumber): LineMoment => toSi(value, lineMomentUnits['N m/m']) as LineMoment;
/** The number of newton metres per metre in a line moment. */
export const inNmPerM = (quantity: LineMoment): number => fromSi(quantity, lineMomentUnits['N m/m']);

/** A line moment given in kilonewton metres per metre. */
export const kNmPerM = (value: PlainNumber): LineMoment => toSi(value, lineMomentUnits['kN m/m']) as LineMoment;
/** The number of kilonewton metres per metre in a line moment. */
export const inKNmPerM = (quantity: LineMoment): number => fromSi(quantity, lineMomentUnits['kN m/m']);

/** A line moment given in pound-force inches per inch. */
export const lbfInPerIn = (value: PlainNumber): LineMoment => toSi(value, lineMomentUnits['lbf in/in']) as LineMoment;
/** The number of pound-force inches per inch in a line moment. */
export const inLbfInPerIn = (quantity: LineMoment): number => fromSi(quantity, lineMomentUnits['lbf in/in']);
