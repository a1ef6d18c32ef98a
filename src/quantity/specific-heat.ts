import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { specificHeatUnits } from './units/specific-heat.js';

/** An energy per mass and temperature; also the specific gas constant. */
export type SpecificHeat = Quantity<'specific heat'>;

/** A specific heat given in joules per kilogram kelvin. */
export const JPerKgK = (value: PlainNumber): SpecificHeat => toSi(value, specificHeatUnits['J/(kg K)']) as SpecificHeat;
/** The number of joules per kilogram kelvin in a specific heat. */
export const inJPerKgK = (quantity: SpecificHeat): number => fromSi(quantity, specificHeatUnits['J/(kg K)']);

/** A specific heat given in kilojoules per kilogram kelvin. */
export const kJPerKgK = (value: PlainNumber): SpecificHeat =>
  toSi(value, specificHeatUnits['kJ/(kg K)']) as SpecificHeat;
/** The number of kilojoules per kilogram kelvin in a specific heat. */
export const inKJPerKgK = (quantity: SpecificHeat): number => fromSi(quantity, specificHeatUnits['kJ/(kg K)']);
