import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { temperatureCoefficientUnits } from './units/temperature-coefficient.js';

/** How much a ratio changes with each kelvin. */
export type TemperatureCoefficient = Quantity<'temperature coefficient'>;

/** A temperature coefficient given in parts of one per kelvin. */
export const partsPerK = (value: PlainNumber): TemperatureCoefficient =>
  toSi(value, temperatureCoefficientUnits['1/K']) as TemperatureCoefficient;
/** The number of parts of one per kelvin in a temperature coefficient. */
export const inPartsPerK = (quantity: TemperatureCoefficient): number =>
  fromSi(quantity, temperatureCoefficientUnits['1/K']);

/** A temperature coefficient given in per cent per kelvin. */
export const percentPerK = (value: PlainNumber): TemperatureCoefficient =>
  toSi(value, temperatureCoefficientUnits['%/K']) as TemperatureCoefficient;
/** The number of per cent per kelvin in a temperature coefficient. */
export const inPercentPerK = (quantity: TemperatureCoefficient): number =>
  fromSi(quantity, temperatureCoefficientUnits['%/K']);
