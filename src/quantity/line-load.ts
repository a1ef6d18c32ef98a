import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { lineLoadUnits } from './units/line-load.js';

/** Force for each width of a laminate: the pull of a load round or along the pipe. */
export type LineLoad = Quantity<'line load'>;

/** A line load given in newtons per metre. */
export const NPerM = (value: PlainNumber): LineLoad => toSi(value, lineLoadUnits['N/m']) as LineLoad;
/** The number of newtons per metre in a line load. */
export const inNPerM = (quantity: LineLoad): number => fromSi(quantity, lineLoadUnits['N/m']);

/** A line load given in newtons per millimetre. */
export const NPerMm = (value: PlainNumber): LineLoad => toSi(value, lineLoadUnits['N/mm']) as LineLoad;
/** The number of newtons per millimetre in a line load. */
export const inNPerMm = (quantity: LineLoad): number => fromSi(quantity, lineLoadUnits['N/mm']);

/** A line load given in pound-force per inch. */
export const lbfPerIn = (value: PlainNumber): LineLoad => toSi(value, lineLoadUnits['lbf/in']) as LineLoad;
/** The number of pound-force per inch in a line load. */
export const inLbfPerIn = (quantity: LineLoad): number => fromSi(quantity, lineLoadUnits['lbf/in']);
