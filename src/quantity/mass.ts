import { fromSi, type PlainNumber, type Quantity, toSi, type UnitTable } from './quantity.js';

/** A mass: resin, hardener, filler. */
export type Mass = Quantity<'mass'>;

/** Units in which a mass is written, each as an exact ratio to the SI unit. */
export const massUnits = {
  kg: [1, 1],
  g: [1, 1000],
  mg: [1, 1000000],
  t: [1000, 1],
  lb: [45359237, 100000000],
  oz: [45359237, 1600000000],
} as const satisfies UnitTable;

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
