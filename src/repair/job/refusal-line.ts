import { type CalculationError, inWords } from '../../formula/index.js';
import { type Amount, exactly, type Kind, type Line, line, roundedDown, roundedUp } from '../../quantity/index.js';

const KINDS: Readonly<Record<string, Kind>> = {
  m: 'length',
  m2: 'area',
  m3: 'volume',
  s: 'time',
  kg: 'mass',
  N: 'force',
  Pa: 'stress',
  K: 'temperature',
  'kg/s': 'mass flow',
  'm/s': 'speed',
  'J/m2': 'energy release rate',
};

/** A refusal as a sentence whose numbers the reader sees in units of choice: what was calculated, what broke which limit. */
export function refusalLine(
  what: string,
  { parameter, value, unit, constraint, limit, source }: CalculationError,
): Line {
  const kind = kindOf(parameter, unit);
  const words = parameter.replaceAll(/[A-Z]/gu, (letter) => ` ${letter.toLowerCase()}`);
  const from = source === undefined ? '' : ` (${source})`;
  if (typeof value !== 'number' || kind === undefined)
    return line(`${what}: ${words} is ${inWords(value, unit)}; ${constraint}${from}`);
  const amounts: Amount[] = [exactly(words, kind, value)];
  if (limit === undefined) return line(`${what}: ${words} is {0}; ${constraint}${from}`, ...amounts);
  const written = inWords(limit, unit);
  amounts.push(limitOf(constraint.slice(0, constraint.indexOf(written)), kind, limit));
  return line(`${what}: ${words} is {0}; ${constraint.replace(written, '{1}')}${from}`, ...amounts);
}

/** A limit by what the sentence says before it: written so that what reaches it on paper passes. */
function limitOf(before: string, kind: Amount['kind'], limit: number): Amount {
  if (/\b(?:at most|below|less than)\b/u.test(before)) return roundedDown('limit', kind, limit);
  if (/\b(?:at least|above|reach|more than|longer than)\b/u.test(before)) return roundedUp('limit', kind, limit);
  return exactly('limit', kind, limit);
}

function kindOf(parameter: string, unit: string): Amount['kind'] | undefined {
  if (unit === '') return /strain$/iu.test(parameter) ? 'strain' : 'number';
  if (unit === 'Pa' && /pressure/iu.test(parameter)) return 'gauge pressure';
  return Object.hasOwn(KINDS, unit) ? KINDS[unit] : undefined;
}
