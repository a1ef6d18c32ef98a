import { fromSi, type Kind, type Quantity } from './quantity.js';
import { unitOf } from './units/index.js';

/** The count of significant digits that a sheet shows when nobody asks for another. */
export const DIGITS = 4;

/**
 * Writes a number with `digits` significant digits. Trailing zeros are kept, since they say how far the number is known.
 * From 0.001 up to a million there is no exponent.
 */
export function formatNumber(value: number, digits = DIGITS): string {
  if (value === 0) return '0';
  const rounded = Number(value.toPrecision(digits));
  const size = Math.abs(rounded);
  if (size >= 1e6 || size < 1e-3) return value.toExponential(digits - 1).replace('e+', 'e');
  return size >= 10 ** digits ? String(rounded) : value.toPrecision(digits);
}

/**
 * A quantity as people read it: the number to so many significant digits, 4 where nobody asks, and the unit behind it. For
 * text that reads back to the same float64 there is `writeQuantity`.
 *
 * @throws RangeError when the kind has no such unit, when it is not finite, or the digits are not a whole number from 1 to 15
 */
export function formatQuantity<K extends Kind>(kind: K, value: Quantity<K>, symbol: string, digits = DIGITS): string {
  const unit = unitOf(kind, symbol);
  if (unit === undefined) throw new RangeError(`a ${kind} is not written in ${symbol}`);
  if (!(Number.isInteger(digits) && digits >= 1 && digits <= 15))
    throw new RangeError(`digits is ${digits}; must be a whole number from 1 to 15`);
  if (!Number.isFinite(value)) throw new RangeError(`a ${kind} of ${value} is no number`);
  const number = formatNumber(fromSi(value, unit), digits);
  return symbol === '1' ? number : `${number} ${symbol}`;
}
