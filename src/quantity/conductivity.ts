import { fromSi, type PlainNumber, type Quantity, toSi, type UnitTable } from './quantity.js';

/** An electrical conductivity: the measure of dissolved salts. */
export type Conductivity = Quantity<'conductivity'>;

/** Units in which a conductivity is written, each as an exact ratio to the SI unit. */
export const conductivityUnits = {
  'S/m': [1, 1],
  'uS/cm': [1, 10000],
  'mS/m': [1, 1000],
} as const satisfies UnitTable;

/** A conductivity given in siemens per metre. */
export const SPerM = (value: PlainNumber): Conductivity => toSi(value, conductivityUnits['S/m']) as Conductivity;
/** The number of siemens per metre in a conductivity. */
export const inSPerM = (quantity: Conductivity): number => fromSi(quantity, conductivityUnits['S/m']);

/** A conductivity given in microsiemens per centimetre. */
export const uSPerCm = (value: PlainNumber): Conductivity => toSi(value, conductivityUnits['uS/cm']) as Conductivity;
/** The number of microsiemens per centimetre in a conductivity. */
export const inUSPerCm = (quantity: Conductivity): number => fromSi(quantity, conductivityUnits['uS/cm']);
