import { fromSi, type PlainNumber, type Quantity, toSi, type UnitTable } from './quantity.js';

/** A volume: filler collar, resin, line content. */
export type Volume = Quantity<'volume'>;

/** Units in which a volume is written, each as an exact ratio to the SI unit. */
export const volumeUnits = {
  m3: [1, 1],
  mm3: [1, 1000000000],
  cm3: [1, 1000000],
  mL: [1, 1000000],
  L: [1, 1000],
  in3: [16387064, 1000000000000],
  ft3: [28316846592, 1000000000000],
  gal: [3785411784, 1000000000000],
  'fl oz': [3785411784, 128000000000000],
} as const satisfies UnitTable;

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
