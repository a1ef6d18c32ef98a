import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { temperatureDifferenceUnits } from './units/temperature-difference.js';

/** A difference of two temperatures. Written in K or deltaF, never in degC: 5 degC is a temperature. */
export type TemperatureDifference = Quantity<'temperature difference'>;

/** A temperature difference given in kelvin. */
export const kelvin = (value: PlainNumber): TemperatureDifference =>
  toSi(value, temperatureDifferenceUnits.K) as TemperatureDifference;
/** The number of kelvin in a temperature difference. */
export const inKelvin = (quantity: TemperatureDifference): number => fromSi(quantity, temperatureDifferenceUnits.K);

/** A temperature difference given in Fahrenheit degrees. */
export const degF = (value: PlainNumber): TemperatureDifference =>
  toSi(value, temperatureDifferenceUnits.deltaF) as TemperatureDifference;
/** The number of Fahrenheit degrees in a temperature difference. */
export const inDegF = (quantity: TemperatureDifference): number => fromSi(quantity, temperatureDifferenceUnits.deltaF);
