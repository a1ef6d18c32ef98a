import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { stressUnits } from './units/stress.js';

/** A stress or a strength: hoop stress, yield, allowable stress, lap shear strength. */
export type Stress = Quantity<'stress'>;

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

/** A stress given in kilopascals. */
export const kPa = (value: PlainNumber): Stress => toSi(value, stressUnits.kPa) as Stress;
/** The number of kilopascals in a stress. */
export const inKPa = (quantity: Stress): number => fromSi(quantity, stressUnits.kPa);

/** A stress given in gigapascals. */
export const GPa = (value: PlainNumber): Stress => toSi(value, stressUnits.GPa) as Stress;
/** The number of gigapascals in a stress. */
export const inGPa = (quantity: Stress): number => fromSi(quantity, stressUnits.GPa);
