import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { angleUnits } from './units/angle.js';

/** A plane angle. */
export type Angle = Quantity<'angle'>;

/** An angle given in radians. */
export const rad = (value: PlainNumber): Angle => toSi(value, angleUnits.rad) as Angle;
/** The number of radians in an angle. */
export const inRad = (quantity: Angle): number => fromSi(quantity, angleUnits.rad);

/** An angle given in degrees. */
export const deg = (value: PlainNumber): Angle => toSi(value, angleUnits.deg) as Angle;
/** The number of degrees in an angle. */
export const inDeg = (quantity: Angle): number => fromSi(quantity, angleUnits.deg);
