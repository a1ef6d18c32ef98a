import { fromSi, type PlainNumber, type Quantity, toSi, type UnitTable } from './quantity.js';

/** An energy: stored in a pressure test, released by a curing mass. */
export type Energy = Quantity<'energy'>;

/** Units in which an energy is written, each as an exact ratio to the SI unit. */
export const energyUnits = {
  J: [1, 1],
  kJ: [1000, 1],
  MJ: [1000000, 1],
  'ft lbf': [3389544870828501, 2500000000000000],
} as const satisfies UnitTable;

/** An energy given in joules. */
export const J = (value: PlainNumber): Energy => toSi(value, energyUnits.J) as Energy;
/** The number of joules in an energy. */
export const inJ = (quantity: Energy): number => fromSi(quantity, energyUnits.J);

/** An energy given in kilojoules. */
export const kJ = (value: PlainNumber): Energy => toSi(value, energyUnits.kJ) as Energy;
/** The number of kilojoules in an energy. */
export const inKJ = (quantity: Energy): number => fromSi(quantity, energyUnits.kJ);

/** An energy given in megajoules. */
export const MJ = (value: PlainNumber): Energy => toSi(value, energyUnits.MJ) as Energy;
/** The number of megajoules in an energy. */
export const inMJ = (quantity: Energy): number => fromSi(quantity, energyUnits.MJ);
