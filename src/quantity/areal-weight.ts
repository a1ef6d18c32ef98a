import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { arealWeightUnits } from './units/areal-weight.js';

/** A mass per area: fabric, coating, soluble salts. */
export type ArealWeight = Quantity<'areal weight'>;

/** An areal weight given in kilograms per square metre. */
export const kgPerM2 = (value: PlainNumber): ArealWeight => toSi(value, arealWeightUnits['kg/m2']) as ArealWeight;
/** The number of kilograms per square metre in an areal weight. */
export const inKgPerM2 = (quantity: ArealWeight): number => fromSi(quantity, arealWeightUnits['kg/m2']);

/** An areal weight given in grams per square metre. */
export const gPerM2 = (value: PlainNumber): ArealWeight => toSi(value, arealWeightUnits['g/m2']) as ArealWeight;
/** The number of grams per square metre in an areal weight. */
export const inGPerM2 = (quantity: ArealWeight): number => fromSi(quantity, arealWeightUnits['g/m2']);

/** An areal weight given in ounces per square yard. */
export const ozPerYd2 = (value: PlainNumber): ArealWeight => toSi(value, arealWeightUnits['oz/yd2']) as ArealWeight;
/** The number of ounces per square yard in an areal weight. */
export const inOzPerYd2 = (quantity: ArealWeight): number => fromSi(quantity, arealWeightUnits['oz/yd2']);

/** An areal weight given in milligrams per square metre. */
export const mgPerM2 = (value: PlainNumber): ArealWeight => toSi(value, arealWeightUnits['mg/m2']) as ArealWeight;
/** The number of milligrams per square metre in an areal weight. */
export const inMgPerM2 = (quantity: ArealWeight): number => fromSi(quantity, arealWeightUnits['mg/m2']);
