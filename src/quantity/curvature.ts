import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { curvatureUnits } from './units/curvature.js';

/** Turn of the tangent of a bent laminate for each length. */
export type Curvature = Quantity<'curvature'>;

/** A curvature given in turns of a radian per metre. */
export const perM = (value: PlainNumber): Curvature => toSi(value, curvatureUnits['1/m']) as Curvature;
/** The number of turns of a radian per metre in a curvature. */
export const inPerM = (quantity: Curvature): number => fromSi(quantity, curvatureUnits['1/m']);

/** A curvature given in turns of a radian per millimetre. */
export const perMm = (value: PlainNumber): Curvature => toSi(value, curvatureUnits['1/mm']) as Curvature;
/** The number of turns of a radian per millimetre in a curvature. */
export const inPerMm = (quantity: Curvature): number => fromSi(quantity, curvatureUnits['1/mm']);

/** A curvature given in turns of a radian per inch. */
export const perInch = (value: PlainNumber): Curvature => toSi(value, curvatureUnits['1/in']) as Curvature;
/** The number of turns of a radian per inch in a curvature. */
export const inPerInch = (quantity: Curvature): number => fromSi(quantity, curvatureUnits['1/in']);
