import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { molarMassUnits } from './units/molar-mass.js';

/** A mass per mole; also equivalent weight: mass per mole of reactive group. */
export type MolarMass = Quantity<'molar mass'>;

/** A molar mass given in kilograms per mole. */
export const kgPerMol = (value: PlainNumber): MolarMass => toSi(value, molarMassUnits['kg/mol']) as MolarMass;
/** The number of kilograms per mole in a molar mass. */
export const inKgPerMol = (quantity: MolarMass): number => fromSi(quantity, molarMassUnits['kg/mol']);

/** A molar mass given in grams per mole. */
export const gPerMol = (value: PlainNumber): MolarMass => toSi(value, molarMassUnits['g/mol']) as MolarMass;
/** The number of grams per mole in a molar mass. */
export const inGPerMol = (quantity: MolarMass): number => fromSi(quantity, molarMassUnits['g/mol']);
