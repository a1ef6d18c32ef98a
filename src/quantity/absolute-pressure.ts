import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { absolutePressureUnits } from './units/absolute-pressure.js';

/** A pressure above vacuum. */
export type AbsolutePressure = Quantity<'absolute pressure'>;

/** An absolute pressure given in pascals. */
export const Pa = (value: PlainNumber): AbsolutePressure => toSi(value, absolutePressureUnits.Pa) as AbsolutePressure;
/** The number of pascals in an absolute pressure. */
export const inPa = (quantity: AbsolutePressure): number => fromSi(quantity, absolutePressureUnits.Pa);

/** An absolute pressure given in kilopascals. */
export const kPa = (value: PlainNumber): AbsolutePressure => toSi(value, absolutePressureUnits.kPa) as AbsolutePressure;
/** The number of kilopascals in an absolute pressure. */
export const inKPa = (quantity: AbsolutePressure): number => fromSi(quantity, absolutePressureUnits.kPa);

/** An absolute pressure given in megapascals. */
export const MPa = (value: PlainNumber): AbsolutePressure => toSi(value, absolutePressureUnits.MPa) as AbsolutePressure;
/** The number of megapascals in an absolute pressure. */
export const inMPa = (quantity: AbsolutePressure): number => fromSi(quantity, absolutePressureUnits.MPa);

/** An absolute pressure given in bar. */
export const bar = (value: PlainNumber): AbsolutePressure => toSi(value, absolutePressureUnits.bar) as AbsolutePressure;
/** The number of bar in an absolute pressure. */
export const inBar = (quantity: AbsolutePressure): number => fromSi(quantity, absolutePressureUnits.bar);

/** An absolute pressure given in hectopascals. */
export const hPa = (value: PlainNumber): AbsolutePressure => toSi(value, absolutePressureUnits.hPa) as AbsolutePressure;
/** The number of hectopascals in an absolute pressure. */
export const inHPa = (quantity: AbsolutePressure): number => fromSi(quantity, absolutePressureUnits.hPa);

/** An absolute pressure given in pounds per square inch. */
export const psi = (value: PlainNumber): AbsolutePressure => toSi(value, absolutePressureUnits.psi) as AbsolutePressure;
/** The number of pounds per square inch in an absolute pressure. */
export const inPsi = (quantity: AbsolutePressure): number => fromSi(quantity, absolutePressureUnits.psi);

/** An absolute pressure given in standard atmospheres. */
export const atm = (value: PlainNumber): AbsolutePressure => toSi(value, absolutePressureUnits.atm) as AbsolutePressure;
/** The number of standard atmospheres in an absolute pressure. */
export const inAtm = (quantity: AbsolutePressure): number => fromSi(quantity, absolutePressureUnits.atm);
