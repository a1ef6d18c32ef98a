import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { timeUnits } from './units/time.js';

/** A duration: cure, pot life, design life. A year is 365.25 days. */
export type Time = Quantity<'time'>;

/** A time given in seconds. */
export const s = (value: PlainNumber): Time => toSi(value, timeUnits.s) as Time;
/** The number of seconds in a time. */
export const inS = (quantity: Time): number => fromSi(quantity, timeUnits.s);

/** A time given in minutes. */
export const minute = (value: PlainNumber): Time => toSi(value, timeUnits.min) as Time;
/** The number of minutes in a time. */
export const inMinute = (quantity: Time): number => fromSi(quantity, timeUnits.min);

/** A time given in hours. */
export const hour = (value: PlainNumber): Time => toSi(value, timeUnits.h) as Time;
/** The number of hours in a time. */
export const inHour = (quantity: Time): number => fromSi(quantity, timeUnits.h);

/** A time given in days. */
export const day = (value: PlainNumber): Time => toSi(value, timeUnits.day) as Time;
/** The number of days in a time. */
export const inDay = (quantity: Time): number => fromSi(quantity, timeUnits.day);

/** A time given in years of 365.25 days. */
export const year = (value: PlainNumber): Time => toSi(value, timeUnits.year) as Time;
/** The number of years of 365.25 days in a time. */
export const inYear = (quantity: Time): number => fromSi(quantity, timeUnits.year);
