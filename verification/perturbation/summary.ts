import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import type { Constant } from './constants.js';
import { caughtBy, countsBySort, type PerturbationList } from './list.js';

/**
 * What the report says of the perturbation, in the small form that is committed: the figures, what goes unnoticed, which
 * derivations notice each formula, and of which constants all this was found.
 */
export interface PerturbationSummary {
  readonly change: number;
  readonly count: number;
  /** The kinds of check, the strongest first; the last is nothing. */
  readonly catchers: readonly string[];
  /** How many constants of each sort each kind of check notices. */
  readonly bySort: Readonly<Record<string, readonly number[]>>;
  /** Constants other than limits that nothing notices. */
  readonly unnoticed: readonly (Place & { readonly smallest: string })[];
  /** The test files of verification/derivations that notice each formula. */
  readonly derivations: Readonly<Record<string, readonly string[]>>;
  /** A hash of the constants by whose they are. */
  readonly constants: Readonly<Record<string, string>>;
  /** Formulas and files whose constants were changed, added or taken away after the run: of them it says nothing. */
  readonly since: readonly string[];
}

/** A constant by what it is, so that neither a file that moves nor a line that is reworded loses it. */
interface Place {
  readonly of: string;
  readonly constant: string;
  readonly sort: string;
  /** Counted from 1 among those of the same text and sort. */
  readonly which: number;
}

export const summaryPath = new URL('summary.json', import.meta.url);

export function readSummary(): PerturbationSummary {
  return JSON.parse(readFileSync(summaryPath, 'utf8'));
}

function groups(constants: readonly Constant[]): Map<string, Constant[]> {
  const byOwner = new Map<string, Constant[]>();
  for (const each of constants) byOwner.set(each.of, [...(byOwner.get(each.of) ?? []), each]);
  return byOwner;
}

/** The identity of the constants: what each is and what it is worth, in the order of their text, by whose they are. */
export function constantHashes(constants: readonly Constant[]): Record<string, string> {
  const hashed = [...groups(constants)].map(([of, own]): [string, string] => {
    const lines = own.map(({ sort, text, places }) => `${sort} ${text} ${places.length}`).sort();
    return [of, createHash('sha256').update(lines.join('\n')).digest('hex').slice(0, 16)];
  });
  return Object.fromEntries(hashed.sort(([a], [b]) => (a < b ? -1 : 1)));
}

const alike = ({ of, text, sort }: Constant, constants: readonly Constant[]): Constant[] =>
  constants.filter((other) => other.of === of && other.text === text && other.sort === sort);

/** Where a constant of the summary stands today; nothing when it does not. */
export function constantAt({ of, constant, sort, which }: Place, constants: readonly Constant[]): Constant | undefined {
  return constants.filter((each) => each.of === of && each.text === constant && each.sort === sort)[which - 1];
}

export function summaryOf(list: PerturbationList, constants: readonly Constant[]): PerturbationSummary {
  const unnoticed = constants.flatMap((each, index): PerturbationSummary['unnoticed'] => {
    const { caughtBy: by, smallest = '' } = list.constants[index] ?? {};
    if (by !== 'nothing' || each.sort === 'limit') return [];
    const { of, text, sort } = each;
    return [{ of, constant: text, sort, which: alike(each, constants).indexOf(each) + 1, smallest }];
  });
  const derivations = Object.entries(list.results).map(([id, found]) => [id, found.derivations] as const);
  return {
    change: list.change,
    count: constants.length,
    catchers: caughtBy,
    bySort: Object.fromEntries(countsBySort(list).map(([sort, ...counts]) => [sort, counts])),
    unnoticed,
    derivations: Object.fromEntries(derivations),
    constants: constantHashes(constants),
    since: [],
  };
}

/** Whose constants are not those of the run, and which formulas there were not, or are no more. */
export function changedSince(
  { constants: then, derivations }: PerturbationSummary,
  constants: readonly Constant[],
  formulas: readonly string[],
): string[] {
  const now = constantHashes(constants);
  const owners = [...Object.keys(now), ...Object.keys(then)].filter((of) => now[of] !== then[of]);
  const unknown = formulas.filter((id) => !(id in derivations));
  const gone = Object.keys(derivations).filter((id) => !formulas.includes(id));
  return [...new Set([...owners, ...unknown, ...gone])].toSorted();
}

/** The summary as it is committed: a line for each constant and formula, so that a change shows what it changed. */
export function summaryText(summary: PerturbationSummary): string {
  const block = (value: object): string => {
    const isList = Array.isArray(value);
    const lines = Object.entries(value).map(
      ([key, each]) => `  ${isList ? '' : `${JSON.stringify(key)}: `}${JSON.stringify(each)}`,
    );
    return `${isList ? '[' : '{'}\n  ${lines.join(',\n  ')}\n  ${isList ? ']' : '}'}`;
  };
  const parts = Object.entries(summary).map(([key, value]) => {
    const isLong = typeof value === 'object' && key !== 'catchers';
    return `  ${JSON.stringify(key)}: ${isLong ? block(value) : JSON.stringify(value)}`;
  });
  return `{\n${parts.join(',\n')}\n}\n`;
}
