import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { saltConductanceFactorUnits } from './units/salt-conductance-factor.js';

/** Areal weight of salt for each siemens of conductance that it gives to the water it is washed into. */
export type SaltConductanceFactor = Quantity<'salt conductance factor'>;

/** A salt conductance factor given in kilograms per square metre siemens. */
export const kgPerM2S = (value: PlainNumber): SaltConductanceFactor =>
  toSi(value, saltConductanceFactorUnits['kg/(m2 S)']) as SaltConductanceFactor;
/** The number of kilograms per square metre siemens in a salt conductance factor. */
export const inKgPerM2S = (quantity: SaltConductanceFactor): number =>
  fromSi(quantity, saltConductanceFactorUnits['kg/(m2 S)']);

/** A salt conductance factor given in grams per square metre and siemens. */
export const gPerM2S = (value: PlainNumber): SaltConductanceFactor =>
  toSi(value, saltConductanceFactorUnits['g/(m2 S)']) as SaltConductanceFactor;
/** The number of grams per square metre and siemens in a salt conductance factor. */
export const inGPerM2S = (quantity: SaltConductanceFactor): number =>
  fromSi(quantity, saltConductanceFactorUnits['g/(m2 S)']);
