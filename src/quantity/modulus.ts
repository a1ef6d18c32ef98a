import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { modulusUnits } from './units/modulus.js';

/** An elastic modulus. */
export type Modulus = Quantity<'modulus'>;

/** A modulus given in pascals. */
export const Pa = (value: PlainNumber): Modulus => toSi(value, modulusUnits.Pa) as Modulus;
/** The number of pascals in a modulus. */
export const inPa = (quantity: Modulus): number => fromSi(quantity, modulusUnits.Pa);

/** A modulus given in megapascals. */
export const MPa = (value: PlainNumber): Modulus => toSi(value, modulusUnits.MPa) as Modulus;
/** The number of megapascals in a modulus. */
export const inMPa = (quantity: Modulus): number => fromSi(quantity, modulusUnits.MPa);

/** A modulus given in gigapascals. */
export const GPa = (value: PlainNumber): Modulus => toSi(value, modulusUnits.GPa) as Modulus;
/** The number of gigapascals in a modulus. */
export const inGPa = (quantity: Modulus): number => fromSi(quantity, modulusUnits.GPa);

/** A modulus given in pounds per square inch. */
export const psi = (value: PlainNumber): Modulus => toSi(value, modulusUnits.psi) as Modulus;
/** The number of pounds per square inch in a modulus. */
export const inPsi = (quantity: Modulus): number => fromSi(quantity, modulusUnits.psi);

/** A modulus given in million pounds per square inch. */
export const Msi = (value: PlainNumber): Modulus => toSi(value, modulusUnits.Msi) as Modulus;
/** The number of million pounds per square inch in a modulus. */
export const inMsi = (quantity: Modulus): number => fromSi(quantity, modulusUnits.Msi);

/** A modulus given in kilopascals. */
export const kPa = (value: PlainNumber): Modulus => toSi(value, modulusUnits.kPa) as Modulus;
/** The number of kilopascals in a modulus. */
export const inKPa = (quantity: Modulus): number => fromSi(quantity, modulusUnits.kPa);

/** A modulus given in thousands of pounds per square inch. */
export const ksi = (value: PlainNumber): Modulus => toSi(value, modulusUnits.ksi) as Modulus;
/** The number of thousands of pounds per square inch in a modulus. */
export const inKsi = (quantity: Modulus): number => fromSi(quantity, modulusUnits.ksi);
