import { fromSi, type PlainNumber, type Quantity, toSi, type UnitTable } from './quantity.js';

/** How much a ratio changes with each kelvin. */
export type TemperatureCoefficient = Quantity<'temperature coefficient'>;

/** Units in which a temperature coefficient is written, each as an exact ratio to the SI unit. */
export const temperatureCoefficientUnits = {
  '1/K': [1, 1],
  '%/K': [1, 100],
} as const satisfies UnitTable;

/** A temperature coefficient given in parts of one per kelvin. */
export const partsPerK = (value: PlainNumber): TemperatureCoefficient =>
  toSi(value, temperatureCoefficientUnits['1/K']) as TemperatureCoefficient;
/** The number of parts of one per kelvin in a temperature coefficient. */
export const inPartsPerK = (quantity: TemperatureCoefficient): number =>
  fromSi(quantity, temperatureCoefficientUnits['1/K']);
