import { fromSi, type PlainNumber, type Quantity, toSi, type UnitTable } from './quantity.js';

/** A mass per volume. */
export type Density = Quantity<'density'>;

/** Units in which a density is written, each as an exact ratio to the SI unit. */
export const densityUnits = {
  'kg/m3': [1, 1],
  'g/cm3': [1000, 1],
  'kg/L': [1000, 1],
  'g/m3': [1, 1000],
  'lb/in3': [56699046250, 2048383],
  'lb/ft3': [28349523125, 1769802912],
  'lb/gal': [736351250, 6145149],
} as const satisfies UnitTable;

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
