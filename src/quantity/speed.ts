import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { speedUnits } from './units/speed.js';

/** A speed: jet, wrapping. */
export type Speed = Quantity<'speed'>;

/** A speed given in metres per second. */
export const mPerS = (value: PlainNumber): Speed => toSi(value, speedUnits['m/s']) as Speed;
/** The number of metres per second in a speed. */
export const inMPerS = (quantity: Speed): number => fromSi(quantity, speedUnits['m/s']);

/** A speed given in metres per minute. */
export const mPerMin = (value: PlainNumber): Speed => toSi(value, speedUnits['m/min']) as Speed;
/** The number of metres per minute in a speed. */
export const inMPerMin = (quantity: Speed): number => fromSi(quantity, speedUnits['m/min']);

/** A speed given in feet per second. */
export const ftPerS = (value: PlainNumber): Speed => toSi(value, speedUnits['ft/s']) as Speed;
/** The number of feet per second in a speed. */
export const inFtPerS = (quantity: Speed): number => fromSi(quantity, speedUnits['ft/s']);

/** A speed given in feet per minute. */
export const ftPerMin = (value: PlainNumber): Speed => toSi(value, speedUnits['ft/min']) as Speed;
/** The number of feet per minute in a speed. */
export const inFtPerMin = (quantity: Speed): number => fromSi(quantity, speedUnits['ft/min']);
