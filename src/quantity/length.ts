import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { lengthUnits } from './units/length.js';

/** A length: diameter, wall thickness, defect length, axial extent. */
export type Length = Quantity<'length'>;

/** A length given in metres. */
export const m = (value: PlainNumber): Length => toSi(value, lengthUnits.m) as Length;
/** The number of metres in a length. */
export const inM = (quantity: Length): number => fromSi(quantity, lengthUnits.m);

/** A length given in millimetres. */
export const mm = (value: PlainNumber): Length => toSi(value, lengthUnits.mm) as Length;
/** The number of millimetres in a length. */
export const inMm = (quantity: Length): number => fromSi(quantity, lengthUnits.mm);

/** A length given in micrometres. */
export const um = (value: PlainNumber): Length => toSi(value, lengthUnits.um) as Length;
/** The number of micrometres in a length. */
export const inUm = (quantity: Length): number => fromSi(quantity, lengthUnits.um);

/** A length given in inches. */
export const inch = (value: PlainNumber): Length => toSi(value, lengthUnits.in) as Length;
/** The number of inches in a length. */
export const inInch = (quantity: Length): number => fromSi(quantity, lengthUnits.in);

/** A length given in feet. */
export const ft = (value: PlainNumber): Length => toSi(value, lengthUnits.ft) as Length;
/** The number of feet in a length. */
export const inFt = (quantity: Length): number => fromSi(quantity, lengthUnits.ft);

/** A length given in thousandths of an inch. */
export const mil = (value: PlainNumber): Length => toSi(value, lengthUnits.mil) as Length;
/** The number of thousandths of an inch in a length. */
export const inMil = (quantity: Length): number => fromSi(quantity, lengthUnits.mil);

/** A length given in centimetres. */
export const cm = (value: PlainNumber): Length => toSi(value, lengthUnits.cm) as Length;
/** The number of centimetres in a length. */
export const inCm = (quantity: Length): number => fromSi(quantity, lengthUnits.cm);

/** A length given in kilometres. */
export const km = (value: PlainNumber): Length => toSi(value, lengthUnits.km) as Length;
/** The number of kilometres in a length. */
export const inKm = (quantity: Length): number => fromSi(quantity, lengthUnits.km);
