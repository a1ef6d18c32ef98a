import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { molarHeatCapacityUnits } from './units/molar-heat-capacity.js';

/** An energy per amount of substance and temperature: the molar gas constant. */
export type MolarHeatCapacity = Quantity<'molar heat capacity'>;

/** A molar heat capacity given in joules per mole kelvin. */
export const JPerMolK = (value: PlainNumber): MolarHeatCapacity =>
  toSi(value, molarHeatCapacityUnits['J/(mol K)']) as MolarHeatCapacity;
/** The number of joules per mole kelvin in a molar heat capacity. */
export const inJPerMolK = (quantity: MolarHeatCapacity): number =>
  fromSi(quantity, molarHeatCapacityUnits['J/(mol K)']);

/** A molar heat capacity given in kilojoules per mole kelvin. */
export const kJPerMolK = (value: PlainNumber): MolarHeatCapacity =>
  toSi(value, molarHeatCapacityUnits['kJ/(mol K)']) as MolarHeatCapacity;
/** The number of kilojoules per mole kelvin in a molar heat capacity. */
export const inKJPerMolK = (quantity: MolarHeatCapacity): number =>
  fromSi(quantity, molarHeatCapacityUnits['kJ/(mol K)']);

/** A molar heat capacity given in calories per mole kelvin. */
export const calPerMolK = (value: PlainNumber): MolarHeatCapacity =>
  toSi(value, molarHeatCapacityUnits['cal/(mol K)']) as MolarHeatCapacity;
/** The number of calories per mole kelvin in a molar heat capacity. */
export const inCalPerMolK = (quantity: MolarHeatCapacity): number =>
  fromSi(quantity, molarHeatCapacityUnits['cal/(mol K)']);
