import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { massUnits } from './units/mass.js';

/** A mass: resin, hardener, filler. */
export type Mass = Quantity<'mass'>;

/** A mass given in kilograms. */
export const kg = (value: PlainNumber): Mass => toSi(value, massUnits.kg) as Mass;
/** The number of kilograms in a mass. */
export const inKg = (quantity: Mass): number => fromSi(quantity, massUnits.kg);

/** A mass given in grams. */
export const g = (value: PlainNumber): Mass => toSi(value, massUnits.g) as Mass;
/** The number of grams in a mass. */
export const inG = (quantity: Mass): number => fromSi(quantity, massUnits.g);

/** A mass given in pounds. */
export const lb = (value: PlainNumber): Mass => toSi(value, massUnits.lb) as Mass;
/** The number of pounds in a mass. */
export const inLb = (quantity: Mass): number => fromSi(quantity, massUnits.lb);

/** A mass given in ounces. */
export const oz = (value: PlainNumber): Mass => toSi(value, massUnits.oz) as Mass;
/** The number of ounces in a mass. */
export const inOz = (quantity: Mass): number => fromSi(quantity, massUnits.oz);

/** A mass given in milligrams. */
export const mg = (value: PlainNumber): Mass => toSi(value, massUnits.mg) as Mass;
/** The number of milligrams in a mass. */
export const inMg = (quantity: Mass): number => fromSi(quantity, massUnits.mg);

/** A mass given in tonnes. */
export const t = (value: PlainNumber): Mass => toSi(value, massUnits.t) as Mass;
/** The number of tonnes in a mass. */
export const inT = (quantity: Mass): number => fromSi(quantity, massUnits.t);
