import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { energyUnits } from './units/energy.js';

/** An energy: stored in a pressure test, released by a curing mass. */
export type Energy = Quantity<'energy'>;

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

/** An energy given in foot-pounds. */
export const ftLbf = (value: PlainNumber): Energy => toSi(value, energyUnits['ft lbf']) as Energy;
/** The number of foot-pounds in an energy. */
export const inFtLbf = (quantity: Energy): number => fromSi(quantity, energyUnits['ft lbf']);
