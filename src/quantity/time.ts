import { fromSi, type PlainNumber, type Quantity, toSi, type UnitTable } from './quantity.js';

/** A duration: cure, pot life, design life. A year is 365.25 days. */
export type Time = Quantity<'time'>;

/** Units in which a time is written, each as an exact ratio to the SI unit. */
export const timeUnits = {
  s: [1, 1],
  min: [60, 1],
  h: [3600, 1],
  day: [86400, 1],
  year: [31557600, 1],
} as const satisfies UnitTable;

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
