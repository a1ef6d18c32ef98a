import { fromSi, type PlainNumber, type Quantity, toSi, type UnitTable } from './quantity.js';

/** An energy per amount of substance and temperature: the molar gas constant. */
export type MolarHeatCapacity = Quantity<'molar heat capacity'>;

/** Units in which a molar heat capacity is written, each as an exact ratio to the SI unit. */
export const molarHeatCapacityUnits = {
  'J/(mol K)': [1, 1],
  'kJ/(mol K)': [1000, 1],
  'cal/(mol K)': [4184, 1000],
} as const satisfies UnitTable;

/** A molar heat capacity given in joules per mole kelvin. */
export const JPerMolK = (value: PlainNumber): MolarHeatCapacity =>
  toSi(value, molarHeatCapacityUnits['J/(mol K)']) as MolarHeatCapacity;
/** The number of joules per mole kelvin in a molar heat capacity. */
export const inJPerMolK = (quantity: MolarHeatCapacity): number =>
  fromSi(quantity, molarHeatCapacityUnits['J/(mol K)']);
