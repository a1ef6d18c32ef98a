import { DIGITS, formatNumber, roundedToward } from '../quantity/format.js';

/** Writes a limit with `digits` significant digits: up where it must be reached, down where it must not be passed. */
export function formatToward(value: number, digits: number, toward: 'up' | 'down'): string {
  return formatNumber(roundedToward(value, digits, toward), digits);
}

/**
 * Writes a number that was given rather than computed: in full where that takes at most `full` significant digits
 * (8.38 stays 8.38), else rounded to `digits`.
 */
export function formatGiven(value: number, digits = DIGITS, full = digits + 2): string {
  if (value === 0) return '0';
  if (Number.isInteger(value) && Math.abs(value) < 1e6 && Math.abs(value) < 10 ** full) return String(value);
  // Twelve digits are beyond any gauge; what a temperature scale leaves behind is not.
  const shortest = Number(value.toPrecision(12));
  const mantissa = shortest.toExponential().split('e')[0] ?? '';
  const count = mantissa.replace(/[-.]/gu, '').length;
  if (count > full) return formatNumber(value, digits);
  const size = Math.abs(shortest);
  if (size >= 1e6 || size < 1e-3) return shortest.toExponential().replace('e+', 'e');
  return String(shortest);
}

/** Half a unit in the last of `digits` significant digits: how far a printed number may be from the one it stands for. */
export function halfUnit(text: string, digits: number): number {
  const size = Math.abs(Number(text));
  return size === 0 ? 0 : 0.5 * 10 ** (Math.floor(Math.log10(size) + 1e-12) - digits + 1);
}

/**
 * Whether a printed number is a rounding of `value` to so many digits. The smallest slack keeps exact halves out of the
 * dispute.
 */
export function rounds(text: string, value: number, digits: number): boolean {
  return Math.abs(Number(text) - value) <= halfUnit(text, digits) * (1 + 1e-6) + Math.abs(value) * 1e-14;
}
