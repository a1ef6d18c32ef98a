import { listed } from './listed.js';

type Leaf = number | string | boolean;

/**
 * Numbers, words and answers of yes or no by their path. Rows of a list stand by their criterion, their id or what they check,
 * else by place.
 */
function leavesOf(value: unknown, path = '', into: Map<string, Leaf> = new Map()): Map<string, Leaf> {
  if (typeof value === 'number' || typeof value === 'string' || typeof value === 'boolean') {
    into.set(path, value);
    return into;
  }
  if (typeof value !== 'object' || value === null) return into;
  if (Array.isArray(value)) {
    for (const [index, row] of value.entries()) leavesOf(row, `${path}[${nameOf(row) ?? index}]`, into);
    return into;
  }
  const members = value as Readonly<Record<string, unknown>>;
  if (typeof members['unit'] === 'string' && typeof members['value'] === 'number') {
    into.set(path, members['value']);
    return into;
  }
  for (const [key, member] of Object.entries(members)) leavesOf(member, path === '' ? key : `${path}.${key}`, into);
  return into;
}

function nameOf(row: unknown): string | undefined {
  if (typeof row !== 'object' || row === null) return undefined;
  const { criterion, id, check } = row as Readonly<Record<string, unknown>>;
  const name = criterion ?? id ?? check;
  return typeof name === 'string' ? name : undefined;
}

/** What became of the leaves of one answer. */
export interface Comparison {
  /** Numbers that were held to the second route. */
  readonly compared: number;
  /** Words and answers of yes or no that were. */
  readonly words: number;
  readonly listed: number;
  /** Each leaf that the two have otherwise, or that one of them has alone. */
  readonly different: readonly string[];
  /** The largest relative difference of the numbers that agree. */
  readonly largest: number;
}

const RELATIVE = 1e-6;
/** Below this in SI two numbers are one: a thousandth of a micrometre, a nanosecond. */
const ABSOLUTE = 1e-9;

/** Holds every leaf of either answer to the other one: what one of them alone gives is a difference too. */
export function compare(answer: Readonly<Record<string, unknown>>, second: unknown): Comparison {
  const theirs = leavesOf(answer);
  const mine = leavesOf(second);
  const different: string[] = [];
  let compared = 0;
  let words = 0;
  let out = 0;
  let largest = 0;
  for (const path of new Set([...theirs.keys(), ...mine.keys()])) {
    if (listed.some((each) => each.path.test(path))) {
      out += 1;
      continue;
    }
    const value = theirs.get(path);
    const other = mine.get(path);
    if (typeof value === 'number' || typeof other === 'number') compared += 1;
    else words += 1;
    if (value === other) continue;
    const apart = typeof value === 'number' && typeof other === 'number' ? Math.abs(other - value) : Number.NaN;
    const size = Math.max(Math.abs(Number(value)), Math.abs(Number(other)));
    if (!(apart <= Math.max(ABSOLUTE, RELATIVE * size))) different.push(`${path}: ${value}, second route ${other}`);
    else if (apart > ABSOLUTE) largest = Math.max(largest, apart / size);
  }
  return { compared, words, listed: out, different, largest };
}
