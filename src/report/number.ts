import { DIGITS, formatNumber } from '../quantity/format.js';

/** To a whole multiple of a step: the nearest, or the next one on that side. A millionth of a step is no reason to go on. */
export function toStep(value: number, step: number, toward?: 'up' | 'down'): number {
  const steps = value / step;
  if (toward === 'up') return Math.ceil(steps - 1e-6) * step;
  if (toward === 'down') return Math.floor(steps + 1e-6) * step;
  return Math.round(steps) * step;
}

/** Writes a limit with `digits` significant digits: up where it must be reached, down where it must not be passed. */
export function formatToward(value: number, digits: number, toward: 'up' | 'down'): string {
  if (value === 0) return '0';
  const place = Math.floor(Math.log10(Math.abs(value)) + 1e-12) - digits + 1;
  const step = 10 ** Math.abs(place);
  // A power of ten below 1 is not exact: the steps are counted by its inverse.
  return formatNumber(place < 0 ? toStep(value * step, 1, toward) / step : toStep(value, step, toward), digits);
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
