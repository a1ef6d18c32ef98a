import { fromSi, type PlainNumber, type Quantity, toSi, type UnitTable } from './quantity.js';

/** A heat of reaction per amount of substance. Not an activation energy, which only shares its unit. */
export type MolarEnthalpy = Quantity<'molar enthalpy'>;

/** Units in which a molar enthalpy is written, each as an exact ratio to the SI unit. */
export const molarEnthalpyUnits = {
  'J/mol': [1, 1],
  'kJ/mol': [1000, 1],
  'kcal/mol': [4184, 1],
} as const satisfies UnitTable;

/** A molar enthalpy given in joules per mole. */
export const molarJPerMol = (value: PlainNumber): MolarEnthalpy =>
  toSi(value, molarEnthalpyUnits['J/mol']) as MolarEnthalpy;
/** The number of joules per mole in a molar enthalpy. */
export const inMolarJPerMol = (quantity: MolarEnthalpy): number => fromSi(quantity, molarEnthalpyUnits['J/mol']);

/** A molar enthalpy given in kilojoules per mole. */
export const molarKJPerMol = (value: PlainNumber): MolarEnthalpy =>
  toSi(value, molarEnthalpyUnits['kJ/mol']) as MolarEnthalpy;
/** The number of kilojoules per mole in a molar enthalpy. */
export const inMolarKJPerMol = (quantity: MolarEnthalpy): number => fromSi(quantity, molarEnthalpyUnits['kJ/mol']);
