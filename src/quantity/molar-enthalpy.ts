import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { molarEnthalpyUnits } from './units/molar-enthalpy.js';

/** A heat of reaction per amount of substance. Not an activation energy, which only shares its unit. */
export type MolarEnthalpy = Quantity<'molar enthalpy'>;

/** A molar enthalpy given in joules per mole. */
export const JPerMol = (value: PlainNumber): MolarEnthalpy => toSi(value, molarEnthalpyUnits['J/mol']) as MolarEnthalpy;
/** The number of joules per mole in a molar enthalpy. */
export const inJPerMol = (quantity: MolarEnthalpy): number => fromSi(quantity, molarEnthalpyUnits['J/mol']);

/** A molar enthalpy given in kilojoules per mole. */
export const kJPerMol = (value: PlainNumber): MolarEnthalpy =>
  toSi(value, molarEnthalpyUnits['kJ/mol']) as MolarEnthalpy;
/** The number of kilojoules per mole in a molar enthalpy. */
export const inKJPerMol = (quantity: MolarEnthalpy): number => fromSi(quantity, molarEnthalpyUnits['kJ/mol']);

/** A molar enthalpy given in kilocalories per mole. */
export const kcalPerMol = (value: PlainNumber): MolarEnthalpy =>
  toSi(value, molarEnthalpyUnits['kcal/mol']) as MolarEnthalpy;
/** The number of kilocalories per mole in a molar enthalpy. */
export const inKcalPerMol = (quantity: MolarEnthalpy): number => fromSi(quantity, molarEnthalpyUnits['kcal/mol']);
