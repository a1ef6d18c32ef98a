import { listed } from './listed.js';

/** Numbers of an answer by their path. Rows of a list stand by their criterion, their id or what they check, else by place. */
function leavesOf(value: unknown, path = '', into: Map<string, number> = new Map()): Map<string, number> {
  if (typeof value === 'number') {
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

/** What became of the numbers of one answer. */
export interface Comparison {
  readonly compared: number;
  readonly listed: number;
  /** Each number that the second route has otherwise, or not at all. */
  readonly different: readonly string[];
}

const RELATIVE = 1e-6;
/** Below this in SI two numbers are one: a thousandth of a micrometre, a nanosecond. */
const ABSOLUTE = 1e-9;

/** Holds every number of an answer of the library to the second route. */
export function compare(answer: Readonly<Record<string, unknown>>, second: unknown): Comparison {
  const mine = leavesOf(second);
  const design = {
    wallToday: leavesOf(answer['found']).get('wallToday') ?? Number.POSITIVE_INFINITY,
  };
  const different: string[] = [];
  let compared = 0;
  let out = 0;
  for (const [path, value] of leavesOf(answer)) {
    if (listed.some((each) => each.path.test(path) && (each.when?.(design) ?? true))) {
      out += 1;
      continue;
    }
    const other = mine.get(path);
    const allowed = Math.max(ABSOLUTE, RELATIVE * Math.max(Math.abs(value), Math.abs(other ?? 0)));
    compared += 1;
    if (other === undefined || !(Math.abs(other - value) <= allowed))
      different.push(`${path}: ${value}, second route ${other}`);
  }
  return { compared, listed: out, different };
}
