import { fromSi, type PlainNumber, type Quantity, toSi, type UnitTable } from './quantity.js';

/** A stress or a strength: hoop stress, yield, allowable stress, lap shear strength. */
export type Stress = Quantity<'stress'>;

/** Units in which a stress is written, each as an exact ratio to the SI unit. */
export const stressUnits = {
  Pa: [1, 1],
  kPa: [1000, 1],
  MPa: [1000000, 1],
  'N/mm2': [1000000, 1],
  GPa: [1000000000, 1],
  psi: [44482216152605, 6451600000],
  ksi: [44482216152605, 6451600],
} as const satisfies UnitTable;

/** A stress given in pascals. */
export const Pa = (value: PlainNumber): Stress => toSi(value, stressUnits.Pa) as Stress;
/** The number of pascals in a stress. */
export const inPa = (quantity: Stress): number => fromSi(quantity, stressUnits.Pa);

/** A stress given in megapascals. */
export const MPa = (value: PlainNumber): Stress => toSi(value, stressUnits.MPa) as Stress;
/** The number of megapascals in a stress. */
export const inMPa = (quantity: Stress): number => fromSi(quantity, stressUnits.MPa);

/** A stress given in pounds per square inch. */
export const psi = (value: PlainNumber): Stress => toSi(value, stressUnits.psi) as Stress;
/** The number of pounds per square inch in a stress. */
export const inPsi = (quantity: Stress): number => fromSi(quantity, stressUnits.psi);

/** A stress given in thousand pounds per square inch. */
export const ksi = (value: PlainNumber): Stress => toSi(value, stressUnits.ksi) as Stress;
/** The number of thousand pounds per square inch in a stress. */
export const inKsi = (quantity: Stress): number => fromSi(quantity, stressUnits.ksi);
