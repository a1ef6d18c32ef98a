import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { energyReleaseRateUnits } from './units/energy-release-rate.js';

/** Energy released per area of new crack: toughness of the bond between laminate and pipe. */
export type EnergyReleaseRate = Quantity<'energy release rate'>;

/** An energy release rate given in joules per square metre. */
export const JPerM2 = (value: PlainNumber): EnergyReleaseRate =>
  toSi(value, energyReleaseRateUnits['J/m2']) as EnergyReleaseRate;
/** The number of joules per square metre in an energy release rate. */
export const inJPerM2 = (quantity: EnergyReleaseRate): number => fromSi(quantity, energyReleaseRateUnits['J/m2']);

/** An energy release rate given in inch pounds per square inch. */
export const inchLbfPerIn2 = (value: PlainNumber): EnergyReleaseRate =>
  toSi(value, energyReleaseRateUnits['in lbf/in2']) as EnergyReleaseRate;
/** The number of inch pounds per square inch in an energy release rate. */
export const inInchLbfPerIn2 = (quantity: EnergyReleaseRate): number =>
  fromSi(quantity, energyReleaseRateUnits['in lbf/in2']);

/** An energy release rate given in kilojoules per square metre. */
export const kJPerM2 = (value: PlainNumber): EnergyReleaseRate =>
  toSi(value, energyReleaseRateUnits['kJ/m2']) as EnergyReleaseRate;
/** The number of kilojoules per square metre in an energy release rate. */
export const inKJPerM2 = (quantity: EnergyReleaseRate): number => fromSi(quantity, energyReleaseRateUnits['kJ/m2']);
