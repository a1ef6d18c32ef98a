import { fromSi, type PlainNumber, type Quantity, toSi, type UnitTable } from './quantity.js';

/** A mass per mole; also equivalent weight: mass per mole of reactive group. */
export type MolarMass = Quantity<'molar mass'>;

/** Units in which a molar mass is written, each as an exact ratio to the SI unit. */
export const molarMassUnits = {
  'kg/mol': [1, 1],
  'g/mol': [1, 1000],
} as const satisfies UnitTable;

/** A molar mass given in kilograms per mole. */
export const kgPerMol = (value: PlainNumber): MolarMass => toSi(value, molarMassUnits['kg/mol']) as MolarMass;
/** The number of kilograms per mole in a molar mass. */
export const inKgPerMol = (quantity: MolarMass): number => fromSi(quantity, molarMassUnits['kg/mol']);

/** A molar mass given in grams per mole. */
export const gPerMol = (value: PlainNumber): MolarMass => toSi(value, molarMassUnits['g/mol']) as MolarMass;
/** The number of grams per mole in a molar mass. */
export const inGPerMol = (quantity: MolarMass): number => fromSi(quantity, molarMassUnits['g/mol']);
