import { ulp } from '../oracles/ulp.js';

/** A number as it stands in print: its value, and the place of its last digit. */
export interface Printed {
  readonly value: number;
  /** The value of one unit in the last printed place; 0 for a fraction, which is exact. */
  readonly place: number;
  /** Significant digits; for a printed zero, the digits after the point. */
  readonly digits: number;
  /** The text behind the number. */
  readonly unit: string;
}

const NUMBER =
  /^\s*(?<sign>[+-]?)(?:(?<fraction>(?:\d+[\s-]+)?\d+\/\d+)|(?<decimal>\d+(?:\.\d*)?|\.\d+)(?:e(?<exponent>[+-]?\d+))?)(?![\d./])\s*(?<unit>.*?)\s*$/iu;

function fraction(text: string): number {
  const parts = text.split(/[\s-]+/u);
  const [top, bottom] = (parts.at(-1) ?? '').split('/').map(Number);
  return (parts.length > 1 ? Number(parts[0]) : 0) + (top ?? Number.NaN) / (bottom ?? Number.NaN);
}

/** Ten to a whole power, as the nearest double. */
function powerOfTen(exponent: number): number {
  return Number(`1e${exponent}`);
}

/**
 * Reads the number at the start of a text and how far it is printed.
 *
 * @param digits significant digits, where the text's own mislead
 */
export function readPrinted(text: string, digits?: number): Printed | undefined {
  const groups = NUMBER.exec(text)?.groups;
  if (groups === undefined) return undefined;
  const { sign, decimal, exponent, fraction: parts, unit = '' } = groups;
  const turn = sign === '-' ? -1 : 1;
  if (decimal === undefined) {
    const value = turn * fraction(parts ?? '');
    return Number.isFinite(value) ? { value, place: 0, digits: 17, unit } : undefined;
  }
  const value = turn * Number(exponent === undefined ? decimal : `${decimal}e${exponent}`);
  if (!Number.isFinite(value)) return undefined;
  const after = decimal.split('.')[1]?.length ?? 0;
  const last = Number(exponent ?? 0) - after;
  if (value === 0) return { value, place: powerOfTen(last), digits: Math.max(0, -last), unit };
  if (digits === undefined) {
    return { value, place: powerOfTen(last), digits: decimal.replace('.', '').replace(/^0+/u, '').length, unit };
  }
  const first = Number(Math.abs(value).toExponential().split('e')[1]);
  return { value, place: powerOfTen(first - digits + 1), digits, unit };
}

export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** All that prints as this: half a unit in the last place to both sides, or one unit outward where the print was cut. */
export function printedInterval({ value, place }: Printed, truncated = false): Interval {
  if (!truncated) return { low: value - place / 2, high: value + place / 2 };
  return value < 0 ? { low: value - place, high: value } : { low: value, high: value + place };
}

/** Whether a computed value lies in an interval, give or take the rounding of its conversion to the printed unit. */
export function inside(computed: number, { low, high }: Interval): boolean {
  const slack = 4 * ulp(Math.max(Math.abs(computed), Math.abs(low), Math.abs(high)));
  return computed >= low - slack && computed <= high + slack;
}

/**
 * Digits agreed, between 0 and the digits printed: minus the decimal logarithm of the relative error, and for a printed
 * zero, which has no relative error, of the absolute one.
 */
export function digitsAgreed(computed: number, printed: Printed): number {
  const off = Math.abs(computed - printed.value);
  const error = printed.value === 0 ? off : off / Math.abs(printed.value);
  if (error === 0) return printed.digits;
  return Math.min(printed.digits, Math.max(0, -Math.log10(error)));
}
