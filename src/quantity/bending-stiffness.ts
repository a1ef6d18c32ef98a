import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { bendingStiffnessUnits } from './units/bending-stiffness.js';

/** Line moment of a laminate for each curvature. */
export type BendingStiffness = Quantity<'bending stiffness'>;

/** A bending stiffness given in newton metres. */
export const Nm = (value: PlainNumber): BendingStiffness =>
  toSi(value, bendingStiffnessUnits['N m']) as BendingStiffness;
/** The number of newton metres in a bending stiffness. */
export const inNm = (quantity: BendingStiffness): number => fromSi(quantity, bendingStiffnessUnits['N m']);

/** A bending stiffness given in newton millimetres. */
export const Nmm = (value: PlainNumber): BendingStiffness =>
  toSi(value, bendingStiffnessUnits['N mm']) as BendingStiffness;
/** The number of newton millimetres in a bending stiffness. */
export const inNmm = (quantity: BendingStiffness): number => fromSi(quantity, bendingStiffnessUnits['N mm']);

/** A bending stiffness given in pound-force inches. */
export const lbfIn = (value: PlainNumber): BendingStiffness =>
  toSi(value, bendingStiffnessUnits['lbf in']) as BendingStiffness;
/** The number of pound-force inches in a bending stiffness. */
export const inLbfIn = (quantity: BendingStiffness): number => fromSi(quantity, bendingStiffnessUnits['lbf in']);
