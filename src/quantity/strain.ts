import { fromSi, type PlainNumber, type Quantity, toSi, type UnitTable } from './quantity.js';

/** A strain: elongation per length. */
export type Strain = Quantity<'strain'>;

/** Units in which a strain is written, each as an exact ratio to the SI unit. */
export const strainUnits = {
  '1': [1, 1],
  'mm/mm': [1, 1],
  'in/in': [1, 1],
  '%': [1, 100],
  microstrain: [1, 1000000],
} as const satisfies UnitTable;

/** A strain given in parts of one. */
export const fraction = (value: PlainNumber): Strain => toSi(value, strainUnits['1']) as Strain;
/** The number of parts of one in a strain. */
export const inFraction = (quantity: Strain): number => fromSi(quantity, strainUnits['1']);

/** A strain given in per cent. */
export const percent = (value: PlainNumber): Strain => toSi(value, strainUnits['%']) as Strain;
/** The number of per cent in a strain. */
export const inPercent = (quantity: Strain): number => fromSi(quantity, strainUnits['%']);

/** A strain given in microstrain. */
export const micro = (value: PlainNumber): Strain => toSi(value, strainUnits.microstrain) as Strain;
/** The number of microstrain in a strain. */
export const inMicro = (quantity: Strain): number => fromSi(quantity, strainUnits.microstrain);
