import { fromSi, type PlainNumber, type Quantity, toSi, type UnitTable } from './quantity.js';

/** The energy in the exponent of a rate law. */
export type ActivationEnergy = Quantity<'activation energy'>;

/** Units in which an activation energy is written, each as an exact ratio to the SI unit. */
export const activationEnergyUnits = {
  'J/mol': [1, 1],
  'kJ/mol': [1000, 1],
  'kcal/mol': [4184, 1],
} as const satisfies UnitTable;

/** An activation energy given in joules per mole. */
export const JPerMol = (value: PlainNumber): ActivationEnergy =>
  toSi(value, activationEnergyUnits['J/mol']) as ActivationEnergy;
/** The number of joules per mole in an activation energy. */
export const inJPerMol = (quantity: ActivationEnergy): number => fromSi(quantity, activationEnergyUnits['J/mol']);

/** An activation energy given in kilojoules per mole. */
export const kJPerMol = (value: PlainNumber): ActivationEnergy =>
  toSi(value, activationEnergyUnits['kJ/mol']) as ActivationEnergy;
/** The number of kilojoules per mole in an activation energy. */
export const inKJPerMol = (quantity: ActivationEnergy): number => fromSi(quantity, activationEnergyUnits['kJ/mol']);
