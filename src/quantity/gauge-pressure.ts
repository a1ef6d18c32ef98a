import { fromSi, type PlainNumber, type Quantity, toSi, type UnitTable } from './quantity.js';

/** A pressure above the surrounding atmosphere: what a gauge on the line reads. */
export type GaugePressure = Quantity<'gauge pressure'>;

/** Units in which a gauge pressure is written, each as an exact ratio to the SI unit. */
export const gaugePressureUnits = {
  Pa: [1, 1],
  kPa: [1000, 1],
  MPa: [1000000, 1],
  bar: [100000, 1],
  barg: [100000, 1],
  psi: [44482216152605, 6451600000],
  psig: [44482216152605, 6451600000],
} as const satisfies UnitTable;

/** A gauge pressure given in pascals. */
export const Pa = (value: PlainNumber): GaugePressure => toSi(value, gaugePressureUnits.Pa) as GaugePressure;
/** The number of pascals in a gauge pressure. */
export const inPa = (quantity: GaugePressure): number => fromSi(quantity, gaugePressureUnits.Pa);

/** A gauge pressure given in kilopascals. */
export const kPa = (value: PlainNumber): GaugePressure => toSi(value, gaugePressureUnits.kPa) as GaugePressure;
/** The number of kilopascals in a gauge pressure. */
export const inKPa = (quantity: GaugePressure): number => fromSi(quantity, gaugePressureUnits.kPa);

/** A gauge pressure given in megapascals. */
export const MPa = (value: PlainNumber): GaugePressure => toSi(value, gaugePressureUnits.MPa) as GaugePressure;
/** The number of megapascals in a gauge pressure. */
export const inMPa = (quantity: GaugePressure): number => fromSi(quantity, gaugePressureUnits.MPa);

/** A gauge pressure given in bar. */
export const bar = (value: PlainNumber): GaugePressure => toSi(value, gaugePressureUnits.bar) as GaugePressure;
/** The number of bar in a gauge pressure. */
export const inBar = (quantity: GaugePressure): number => fromSi(quantity, gaugePressureUnits.bar);

/** A gauge pressure given in pounds per square inch. */
export const psi = (value: PlainNumber): GaugePressure => toSi(value, gaugePressureUnits.psi) as GaugePressure;
/** The number of pounds per square inch in a gauge pressure. */
export const inPsi = (quantity: GaugePressure): number => fromSi(quantity, gaugePressureUnits.psi);
