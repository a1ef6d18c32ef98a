import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { strainUnits } from './units/strain.js';

/** A strain: elongation per length. */
export type Strain = Quantity<'strain'>;

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
