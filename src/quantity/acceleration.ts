import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { accelerationUnits } from './units/acceleration.js';

/** An acceleration: that of fall, which makes weight of mass. */
export type Acceleration = Quantity<'acceleration'>;

/** An acceleration given in newtons for each kilogram. */
export const NPerKg = (value: PlainNumber): Acceleration => toSi(value, accelerationUnits['N/kg']) as Acceleration;
/** The number of newtons for each kilogram in an acceleration. */
export const inNPerKg = (quantity: Acceleration): number => fromSi(quantity, accelerationUnits['N/kg']);
