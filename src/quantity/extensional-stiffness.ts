import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { extensionalStiffnessUnits } from './units/extensional-stiffness.js';

/** Line load of a laminate for each strain of its mid-plane. */
export type ExtensionalStiffness = Quantity<'extensional stiffness'>;

/** An extensional stiffness given in newtons per metre. */
export const NPerM = (value: PlainNumber): ExtensionalStiffness =>
  toSi(value, extensionalStiffnessUnits['N/m']) as ExtensionalStiffness;
/** The number of newtons per metre in an extensional stiffness. */
export const inNPerM = (quantity: ExtensionalStiffness): number => fromSi(quantity, extensionalStiffnessUnits['N/m']);

/** An extensional stiffness given in newtons per millimetre. */
export const NPerMm = (value: PlainNumber): ExtensionalStiffness =>
  toSi(value, extensionalStiffnessUnits['N/mm']) as ExtensionalStiffness;
/** The number of newtons per millimetre in an extensional stiffness. */
export const inNPerMm = (quantity: ExtensionalStiffness): number => fromSi(quantity, extensionalStiffnessUnits['N/mm']);

/** An extensional stiffness given in pound-force per inch. */
export const lbfPerIn = (value: PlainNumber): ExtensionalStiffness =>
  toSi(value, extensionalStiffnessUnits['lbf/in']) as ExtensionalStiffness;
/** The number of pound-force per inch in an extensional stiffness. */
export const inLbfPerIn = (quantity: ExtensionalStiffness): number =>
  fromSi(quantity, extensionalStiffnessUnits['lbf/in']);
