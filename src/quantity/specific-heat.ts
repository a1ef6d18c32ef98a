import { fromSi, type PlainNumber, type Quantity, toSi, type UnitTable } from './quantity.js';

/** An energy per mass and temperature; also the specific gas constant. */
export type SpecificHeat = Quantity<'specific heat'>;

/** Units in which a specific heat is written, each as an exact ratio to the SI unit. */
export const specificHeatUnits = {
  'J/(kg K)': [1, 1],
  'kJ/(kg K)': [1000, 1],
  'J/(g K)': [1000, 1],
} as const satisfies UnitTable;

/** A specific heat given in joules per kilogram kelvin. */
export const JPerKgK = (value: PlainNumber): SpecificHeat => toSi(value, specificHeatUnits['J/(kg K)']) as SpecificHeat;
/** The number of joules per kilogram kelvin in a specific heat. */
export const inJPerKgK = (quantity: SpecificHeat): number => fromSi(quantity, specificHeatUnits['J/(kg K)']);

/** A specific heat given in kilojoules per kilogram kelvin. */
export const kJPerKgK = (value: PlainNumber): SpecificHeat =>
  toSi(value, specificHeatUnits['kJ/(kg K)']) as SpecificHeat;
/** The number of kilojoules per kilogram kelvin in a specific heat. */
export const inKJPerKgK = (quantity: SpecificHeat): number => fromSi(quantity, specificHeatUnits['kJ/(kg K)']);
