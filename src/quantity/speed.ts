import { fromSi, type PlainNumber, type Quantity, toSi, type UnitTable } from './quantity.js';

/** A speed: jet, wrapping. */
export type Speed = Quantity<'speed'>;

/** Units in which a speed is written, each as an exact ratio to the SI unit. */
export const speedUnits = {
  'm/s': [1, 1],
  'm/min': [1, 60],
  'ft/s': [3048, 10000],
  'ft/min': [3048, 600000],
} as const satisfies UnitTable;

/** A speed given in metres per second. */
export const mPerS = (value: PlainNumber): Speed => toSi(value, speedUnits['m/s']) as Speed;
/** The number of metres per second in a speed. */
export const inMPerS = (quantity: Speed): number => fromSi(quantity, speedUnits['m/s']);

/** A speed given in metres per minute. */
export const mPerMin = (value: PlainNumber): Speed => toSi(value, speedUnits['m/min']) as Speed;
/** The number of metres per minute in a speed. */
export const inMPerMin = (quantity: Speed): number => fromSi(quantity, speedUnits['m/min']);
