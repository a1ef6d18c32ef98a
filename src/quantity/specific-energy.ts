import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { specificEnergyUnits } from './units/specific-energy.js';

/** An energy per mass: heat of reaction. */
export type SpecificEnergy = Quantity<'specific energy'>;

/** A specific energy given in joules per kilogram. */
export const JPerKg = (value: PlainNumber): SpecificEnergy =>
  toSi(value, specificEnergyUnits['J/kg']) as SpecificEnergy;
/** The number of joules per kilogram in a specific energy. */
export const inJPerKg = (quantity: SpecificEnergy): number => fromSi(quantity, specificEnergyUnits['J/kg']);

/** A specific energy given in kilojoules per kilogram. */
export const kJPerKg = (value: PlainNumber): SpecificEnergy =>
  toSi(value, specificEnergyUnits['kJ/kg']) as SpecificEnergy;
/** The number of kilojoules per kilogram in a specific energy. */
export const inKJPerKg = (quantity: SpecificEnergy): number => fromSi(quantity, specificEnergyUnits['kJ/kg']);
