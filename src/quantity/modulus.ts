import { fromSi, type PlainNumber, type Quantity, toSi, type UnitTable } from './quantity.js';

/** An elastic modulus. */
export type Modulus = Quantity<'modulus'>;

/** Units in which a modulus is written, each as an exact ratio to the SI unit. */
export const modulusUnits = {
  Pa: [1, 1],
  kPa: [1000, 1],
  MPa: [1000000, 1],
  'N/mm2': [1000000, 1],
  GPa: [1000000000, 1],
  psi: [44482216152605, 6451600000],
  ksi: [44482216152605, 6451600],
  Msi: [222411080763025, 32258],
} as const satisfies UnitTable;

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
