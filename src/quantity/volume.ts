import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { volumeUnits } from './units/volume.js';

/** A volume: filler collar, resin, line content. */
export type Volume = Quantity<'volume'>;

/** A volume given in cubic metres. */
export const m3 = (value: PlainNumber): Volume => toSi(value, volumeUnits.m3) as Volume;
/** The number of cubic metres in a volume. */
export const inM3 = (quantity: Volume): number => fromSi(quantity, volumeUnits.m3);

/** A volume given in cubic centimetres. */
export const cm3 = (value: PlainNumber): Volume => toSi(value, volumeUnits.cm3) as Volume;
/** The number of cubic centimetres in a volume. */
export const inCm3 = (quantity: Volume): number => fromSi(quantity, volumeUnits.cm3);

/** A volume given in litres. */
export const L = (value: PlainNumber): Volume => toSi(value, volumeUnits.L) as Volume;
/** The number of litres in a volume. */
export const inL = (quantity: Volume): number => fromSi(quantity, volumeUnits.L);

/** A volume given in millilitres. */
export const mL = (value: PlainNumber): Volume => toSi(value, volumeUnits.mL) as Volume;
/** The number of millilitres in a volume. */
export const inML = (quantity: Volume): number => fromSi(quantity, volumeUnits.mL);

/** A volume given in cubic inches. */
export const in3 = (value: PlainNumber): Volume => toSi(value, volumeUnits.in3) as Volume;
/** The number of cubic inches in a volume. */
export const inIn3 = (quantity: Volume): number => fromSi(quantity, volumeUnits.in3);

/** A volume given in US gallons. */
export const gal = (value: PlainNumber): Volume => toSi(value, volumeUnits.gal) as Volume;
/** The number of US gallons in a volume. */
export const inGal = (quantity: Volume): number => fromSi(quantity, volumeUnits.gal);

/** A volume given in cubic millimetres. */
export const mm3 = (value: PlainNumber): Volume => toSi(value, volumeUnits.mm3) as Volume;
/** The number of cubic millimetres in a volume. */
export const inMm3 = (quantity: Volume): number => fromSi(quantity, volumeUnits.mm3);

/** A volume given in cubic feet. */
export const ft3 = (value: PlainNumber): Volume => toSi(value, volumeUnits.ft3) as Volume;
/** The number of cubic feet in a volume. */
export const inFt3 = (quantity: Volume): number => fromSi(quantity, volumeUnits.ft3);

/** A volume given in US fluid ounces. */
export const flOz = (value: PlainNumber): Volume => toSi(value, volumeUnits['fl oz']) as Volume;
/** The number of US fluid ounces in a volume. */
export const inFlOz = (quantity: Volume): number => fromSi(quantity, volumeUnits['fl oz']);
