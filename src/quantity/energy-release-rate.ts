import { fromSi, type PlainNumber, type Quantity, toSi, type UnitTable } from './quantity.js';

/** Energy released per area of new crack: toughness of the bond between laminate and pipe. */
export type EnergyReleaseRate = Quantity<'energy release rate'>;

/** Units in which an energy release rate is written, each as an exact ratio to the SI unit. */
export const energyReleaseRateUnits = {
  'J/m2': [1, 1],
  'kJ/m2': [1000, 1],
  'N/mm': [1000, 1],
  'in lbf/in2': [44482216152605, 254000000000],
} as const satisfies UnitTable;

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
