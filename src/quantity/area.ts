import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { areaUnits } from './units/area.js';

/** An area: hole, metal loss, surface to cover. */
export type Area = Quantity<'area'>;

/** An area given in square metres. */
export const m2 = (value: PlainNumber): Area => toSi(value, areaUnits.m2) as Area;
/** The number of square metres in an area. */
export const inM2 = (quantity: Area): number => fromSi(quantity, areaUnits.m2);

/** An area given in square millimetres. */
export const mm2 = (value: PlainNumber): Area => toSi(value, areaUnits.mm2) as Area;
/** The number of square millimetres in an area. */
export const inMm2 = (quantity: Area): number => fromSi(quantity, areaUnits.mm2);

/** An area given in square centimetres. */
export const cm2 = (value: PlainNumber): Area => toSi(value, areaUnits.cm2) as Area;
/** The number of square centimetres in an area. */
export const inCm2 = (quantity: Area): number => fromSi(quantity, areaUnits.cm2);

/** An area given in square inches. */
export const in2 = (value: PlainNumber): Area => toSi(value, areaUnits.in2) as Area;
/** The number of square inches in an area. */
export const inIn2 = (quantity: Area): number => fromSi(quantity, areaUnits.in2);

/** An area given in square feet. */
export const ft2 = (value: PlainNumber): Area => toSi(value, areaUnits.ft2) as Area;
/** The number of square feet in an area. */
export const inFt2 = (quantity: Area): number => fromSi(quantity, areaUnits.ft2);
