import { fromSi, type PlainNumber, type Quantity, toSi, type UnitTable } from './quantity.js';

/** Areal weight of salt for each siemens of conductance that it gives to the water it is washed into. */
export type SaltConductanceFactor = Quantity<'salt conductance factor'>;

/** Units in which a salt conductance factor is written, each as an exact ratio to the SI unit. */
export const saltConductanceFactorUnits = {
  'kg/(m2 S)': [1, 1],
  'g/(m2 S)': [1, 1000],
} as const satisfies UnitTable;

/** A salt conductance factor given in kilograms per square metre siemens. */
export const kgPerM2S = (value: PlainNumber): SaltConductanceFactor =>
  toSi(value, saltConductanceFactorUnits['kg/(m2 S)']) as SaltConductanceFactor;
/** The number of kilograms per square metre siemens in a salt conductance factor. */
export const inKgPerM2S = (quantity: SaltConductanceFactor): number =>
  fromSi(quantity, saltConductanceFactorUnits['kg/(m2 S)']);
