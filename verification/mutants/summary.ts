import { appendFileSync, existsSync, mkdirSync, readFileSync } from 'node:fs';
import type { Fate } from './kill.js';

/** What a long run of changes found, as it is committed. */

export interface Counts {
  readonly changes: number;
  readonly noticed: number;
  /** Not noticed, since no case can tell: each has its reason. */
  readonly explained: number;
}

/** A change that nobody noticed and no reason explains. */
interface Unnoticed {
  readonly file: string;
  readonly line: number;
  readonly original: string;
  readonly replacement: string;
  /** In how many tests it makes a difference where it stands. */
  readonly asked: number;
}

export interface MutantsOf {
  readonly tests: number;
  /** All changes, or a sample by this seed. */
  readonly seed?: number | undefined;
  readonly drawnFrom: number;
  readonly byPart: Readonly<Record<string, Counts>>;
  readonly unnoticed: readonly Unnoticed[];
}

export type MutantsSummary = Readonly<Partial<Record<'job' | 'rooms', MutantsOf>>>;

export const mutantsSummaryPath = new URL('summary.json', import.meta.url);

export function readMutantsSummary(): MutantsSummary {
  return existsSync(mutantsSummaryPath) ? JSON.parse(readFileSync(mutantsSummaryPath, 'utf8')) : {};
}

/** Folder of the job, or room: `src/repair/limits/class.ts` is of `limits`, `src/cure/q10.ts` of `cure`. */
function partOf(file: string): string {
  const [, room = '', folder = ''] = file.split('/');
  return room !== 'repair' ? room : folder.endsWith('.ts') ? 'design-repair' : folder;
}

export function countsByPart(
  fates: readonly Fate[],
  isExplained: (fate: Fate) => boolean,
): Readonly<Record<string, Counts>> {
  const counts: Record<string, { changes: number; noticed: number; explained: number }> = {};
  for (const fate of fates) {
    const part = partOf(fate.mutant.file);
    counts[part] ??= { changes: 0, noticed: 0, explained: 0 };
    const count = counts[part];
    count.changes += 1;
    if (fate.by !== undefined) count.noticed += 1;
    else if (isExplained(fate)) count.explained += 1;
  }
  return Object.fromEntries(Object.entries(counts).sort(([a], [b]) => (a < b ? -1 : 1)));
}

/** What noticed each change the last time, by the change; kept in the build only. */
export type Before = Readonly<Record<string, string>>;

export const keyOf = ({ file, original, replacement }: Fate['mutant']): string =>
  `${file}: ${original} -> ${replacement}`;

const beforePath = (of: string): URL => new URL(`../../build/mutants/${of}-noticed-by.jsonl`, import.meta.url);

export function readBefore(of: string): Before {
  const path = beforePath(of);
  if (!existsSync(path)) return {};
  const lines = readFileSync(path, 'utf8').trimEnd().split('\n');
  return Object.fromEntries(lines.map((line) => JSON.parse(line)));
}

/** Kept as it goes: after a run that was stopped the next one asks at once what noticed, and comes as far within minutes. */
export function keepNoticed(of: string, { mutant, by }: Fate): void {
  mkdirSync(new URL('.', beforePath(of)), { recursive: true });
  if (by !== undefined) appendFileSync(beforePath(of), `${JSON.stringify([keyOf(mutant), by])}\n`);
}
