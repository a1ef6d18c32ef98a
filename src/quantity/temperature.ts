import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { temperatureUnits } from './units/temperature.js';

/** A temperature on the absolute scale. */
export type Temperature = Quantity<'temperature'>;

/** A temperature given in kelvin. */
export const kelvin = (value: PlainNumber): Temperature => toSi(value, temperatureUnits.K) as Temperature;
/** The number of kelvin in a temperature. */
export const inKelvin = (quantity: Temperature): number => fromSi(quantity, temperatureUnits.K);

/** A temperature given in degrees Celsius. */
export const degC = (value: PlainNumber): Temperature => toSi(value, temperatureUnits.degC) as Temperature;
/** The number of degrees Celsius in a temperature. */
export const inDegC = (quantity: Temperature): number => fromSi(quantity, temperatureUnits.degC);

/** A temperature given in degrees Fahrenheit. */
export const degF = (value: PlainNumber): Temperature => toSi(value, temperatureUnits.degF) as Temperature;
/** The number of degrees Fahrenheit in a temperature. */
export const inDegF = (quantity: Temperature): number => fromSi(quantity, temperatureUnits.degF);
