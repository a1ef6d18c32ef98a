import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { activationEnergyUnits } from './units/activation-energy.js';

/** The energy in the exponent of a rate law. */
export type ActivationEnergy = Quantity<'activation energy'>;

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

/** An activation energy given in kilocalories per mole. */
export const kcalPerMol = (value: PlainNumber): ActivationEnergy =>
  toSi(value, activationEnergyUnits['kcal/mol']) as ActivationEnergy;
/** The number of kilocalories per mole in an activation energy. */
export const inKcalPerMol = (quantity: ActivationEnergy): number => fromSi(quantity, activationEnergyUnits['kcal/mol']);
