import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { densityUnits } from './units/density.js';

/** A mass per volume. */
export type Density = Quantity<'density'>;

/** A density given in kilograms per cubic metre. */
export const kgPerM3 = (value: PlainNumber): Density => toSi(value, densityUnits['kg/m3']) as Density;
/** The number of kilograms per cubic metre in a density. */
export const inKgPerM3 = (quantity: Density): number => fromSi(quantity, densityUnits['kg/m3']);

/** A density given in grams per cubic centimetre. */
export const gPerCm3 = (value: PlainNumber): Density => toSi(value, densityUnits['g/cm3']) as Density;
/** The number of grams per cubic centimetre in a density. */
export const inGPerCm3 = (quantity: Density): number => fromSi(quantity, densityUnits['g/cm3']);

/** A density given in pounds per cubic inch. */
export const lbPerIn3 = (value: PlainNumber): Density => toSi(value, densityUnits['lb/in3']) as Density;
/** The number of pounds per cubic inch in a density. */
export const inLbPerIn3 = (quantity: Density): number => fromSi(quantity, densityUnits['lb/in3']);

/** A density given in grams per cubic metre. */
export const gPerM3 = (value: PlainNumber): Density => toSi(value, densityUnits['g/m3']) as Density;
/** The number of grams per cubic metre in a density. */
export const inGPerM3 = (quantity: Density): number => fromSi(quantity, densityUnits['g/m3']);

/** A density given in pounds per cubic foot. */
export const lbPerFt3 = (value: PlainNumber): Density => toSi(value, densityUnits['lb/ft3']) as Density;
/** The number of pounds per cubic foot in a density. */
export const inLbPerFt3 = (quantity: Density): number => fromSi(quantity, densityUnits['lb/ft3']);

/** A density given in pounds per US gallon. */
export const lbPerGal = (value: PlainNumber): Density => toSi(value, densityUnits['lb/gal']) as Density;
/** The number of pounds per US gallon in a density. */
export const inLbPerGal = (quantity: Density): number => fromSi(quantity, densityUnits['lb/gal']);
