import { fromSi, type PlainNumber, type Quantity, toSi, type UnitTable } from './quantity.js';

/** A difference of two temperatures. Written in K or deltaF, never in degC: 5 degC is a temperature. */
export type TemperatureDifference = Quantity<'temperature difference'>;

/** Units in which a temperature difference is written, each as an exact ratio to the SI unit. */
export const temperatureDifferenceUnits = {
  K: [1, 1],
  deltaC: [1, 1],
  deltaF: [5, 9],
} as const satisfies UnitTable;

/** A temperature difference given in kelvin. */
export const deltaK = (value: PlainNumber): TemperatureDifference =>
  toSi(value, temperatureDifferenceUnits.K) as TemperatureDifference;
/** The number of kelvin in a temperature difference. */
export const inDeltaK = (quantity: TemperatureDifference): number => fromSi(quantity, temperatureDifferenceUnits.K);

/** A temperature difference given in Fahrenheit degrees. */
export const deltaF = (value: PlainNumber): TemperatureDifference =>
  toSi(value, temperatureDifferenceUnits.deltaF) as TemperatureDifference;
/** The number of Fahrenheit degrees in a temperature difference. */
export const inDeltaF = (quantity: TemperatureDifference): number =>
  fromSi(quantity, temperatureDifferenceUnits.deltaF);
