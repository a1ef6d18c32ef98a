import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { conductivityUnits } from './units/conductivity.js';

/** An electrical conductivity: the measure of dissolved salts. */
export type Conductivity = Quantity<'conductivity'>;

/** A conductivity given in siemens per metre. */
export const SPerM = (value: PlainNumber): Conductivity => toSi(value, conductivityUnits['S/m']) as Conductivity;
/** The number of siemens per metre in a conductivity. */
export const inSPerM = (quantity: Conductivity): number => fromSi(quantity, conductivityUnits['S/m']);

/** A conductivity given in microsiemens per centimetre. */
export const uSPerCm = (value: PlainNumber): Conductivity => toSi(value, conductivityUnits['uS/cm']) as Conductivity;
/** The number of microsiemens per centimetre in a conductivity. */
export const inUSPerCm = (quantity: Conductivity): number => fromSi(quantity, conductivityUnits['uS/cm']);

/** A conductivity given in millisiemens per metre. */
export const mSPerM = (value: PlainNumber): Conductivity => toSi(value, conductivityUnits['mS/m']) as Conductivity;
/** The number of millisiemens per metre in a conductivity. */
export const inMSPerM = (quantity: Conductivity): number => fromSi(quantity, conductivityUnits['mS/m']);
