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

/** To a whole multiple of a step: the nearest, or the next one on that side. A millionth of a step is no reason to go on. */
export function toStep(value: number, step: number, toward?: 'up' | 'down'): number {
  const steps = value / step;
  if (toward === 'up') return Math.ceil(steps - 1e-6) * step;
  if (toward === 'down') return Math.floor(steps + 1e-6) * step;
  return Math.round(steps) * step;
}

/** To `digits` significant digits on one side: up where it must be reached, down where it must not be passed. */
export function roundedToward(value: number, digits: number, toward: 'up' | 'down'): number {
  if (value === 0) return 0;
  const place = Math.floor(Math.log10(Math.abs(value)) + 1e-12) - digits + 1;
  const step = 10 ** Math.abs(place);
  // A power of ten below 1 is not exact: the steps are counted by its inverse.
  const stepped = place < 0 ? toStep(value * step, 1, toward) / step : toStep(value, step, toward);
  return Number(stepped.toPrecision(digits));
}

/**
 * A quantity as people read it: the number to so many significant digits, 4 where nobody asks, and the unit behind it. For
 * text that reads back to the same float64 there is `writeQuantity`.
 *
 * @param kind of the quantity
 * @param value in SI
 * @param symbol of the unit
 * @param digits significant ones
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
