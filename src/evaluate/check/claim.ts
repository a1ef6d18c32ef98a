import { CaseError } from '../../json/case-error.js';
import { type Kind, readQuantity, type Unit, unitOf, units } from '../../quantity/index.js';
import { toSi } from '../../quantity/quantity.js';

/** A result as somebody wrote it down: its number, its unit, and how far it was written. */
export interface Claim {
  readonly text: string;
  readonly number: number;
  /** Nothing for a plain number or a count. */
  readonly unit: Unit | undefined;
  readonly symbol: string;
  /** Significant digits; the zeros at the end of a whole number only hold its places, unless a point follows them. */
  readonly digits: number;
  /** All from here to there prints as this. */
  readonly low: number;
  readonly high: number;
}

const NUMBER = /^\s*[+-]?(?<whole>\d*)(?:\.(?<part>\d*))?(?:e(?<exponent>[+-]?\d+))?/iu;

const isKind = (kind: string): kind is Kind => Object.hasOwn(units, kind);

/** @throws CaseError where the text is no number, or not in a unit of the result */
export function readClaim(text: string, kind: string): Claim {
  const reading = readQuantity(isKind(kind) ? kind : 'ratio', text);
  const groups = NUMBER.exec(text)?.groups;
  if (!reading.ok || groups === undefined || /^[\s\d-]*\d\/\d/u.test(text) || (!isKind(kind) && reading.unit !== '1')) {
    const why = reading.ok ? `${JSON.stringify(text)} is not a ${kind} in digits` : reading.problem;
    throw new CaseError([{ path: 'claimed', value: text, expected: `a ${kind}`, message: `claimed: ${why}` }]);
  }
  const { whole = '', part, exponent = '0' } = groups;
  const written = `${whole}${part ?? ''}`.replace(/^0+/u, '');
  const significant = part === undefined ? written.replace(/0+$/u, '') : written;
  const places = part === undefined ? written.length - significant.length : -part.length;
  const half = Number(`1e${places + Number(exponent)}`) / 2;
  return {
    text,
    number: reading.number,
    unit: isKind(kind) ? unitOf(kind, reading.unit) : undefined,
    symbol: reading.unit === '1' ? '' : reading.unit,
    digits: significant.length,
    low: reading.number - half * (1 + 1e-9),
    high: reading.number + half * (1 + 1e-9),
  };
}

export const isMet = ({ low, high }: Claim, number: number): boolean => number >= low && number <= high;

/** What a claim that can be read stands for, in SI. */
export function claimedSi(text: string, kind: string): number {
  const { number, unit } = readClaim(text, kind);
  return unit === undefined ? number : toSi(number, unit);
}
