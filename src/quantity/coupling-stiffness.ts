import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { couplingStiffnessUnits } from './units/coupling-stiffness.js';

/** Line load of a laminate for each curvature, and line moment for each strain. */
export type CouplingStiffness = Quantity<'coupling stiffness'>;

/** A coupling stiffness given in newtons. */
export const N = (value: PlainNumber): CouplingStiffness => toSi(value, couplingStiffnessUnits.N) as CouplingStiffness;
/** The number of newtons in a coupling stiffness. */
export const inN = (quantity: CouplingStiffness): number => fromSi(quantity, couplingStiffnessUnits.N);

/** A coupling stiffness given in kilonewtons. */
export const kN = (value: PlainNumber): CouplingStiffness =>
  toSi(value, couplingStiffnessUnits.kN) as CouplingStiffness;
/** The number of kilonewtons in a coupling stiffness. */
export const inKN = (quantity: CouplingStiffness): number => fromSi(quantity, couplingStiffnessUnits.kN);

/** A coupling stiffness given in pound-force. */
export const lbf = (value: PlainNumber): CouplingStiffness =>
  toSi(value, couplingStiffnessUnits.lbf) as CouplingStiffness;
/** The number of pound-force in a coupling stiffness. */
export const inLbf = (quantity: CouplingStiffness): number => fromSi(quantity, couplingStiffnessUnits.lbf);
