import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { gaugePressureUnits } from './units/gauge-pressure.js';

/** A pressure above the surrounding atmosphere: what a gauge on the line reads. */
export type GaugePressure = Quantity<'gauge pressure'>;

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
