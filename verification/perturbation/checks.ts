import { inFull } from '../in-process/briefly.js';
import { passes } from '../in-process/passes.js';
import { type CaseResult, verdicts } from '../runner/judge.js';
import type { CaseFileReading } from '../runner/run.js';
import type { Hooks, Loaded } from './bundle.js';

/** What can turn red when a constant is changed: the cases, and the tests of datasets, derivations and the project itself. */

/** From the strongest to the weakest. */
export const CATCHERS = ['outside print', 'dataset', 'derivation', 'recalled or practice', 'own tests only'] as const;
export type Catcher = (typeof CATCHERS)[number];

/** Tests that take long are asked last. */
export const SLOW = /blister|weakest-sub-length/u;

/** Something that can turn red: a case or a test. */
export interface Check {
  readonly name: string;
  readonly catcher: Catcher;
  /** The file of a test; cases have none. */
  readonly file: string | undefined;
  /** Runs on a loaded library; false means that it noticed. A case notices when the verdict of any of its values is worse. */
  readonly holds: (loaded: Loaded) => boolean;
  /** What it touched in the run on unchanged code. */
  readonly constants: Set<number>;
  readonly results: Set<string>;
  /** How often it asked for a constant in that run. */
  readonly calls: number;
}

/** The verdict of a case as a whole and of each of its values, as places in the list from the best to the worst. */
function ranks({ verdict, outcomes }: CaseResult): number[] {
  return [verdict, ...outcomes.map((outcome) => outcome.verdict)].map((each) => verdicts.indexOf(each));
}

function catcherOf({ record }: CaseResult): Catcher {
  // The right value behind an erratum is worked out, not printed.
  if (record.class === 'derivation' || record.erratum !== undefined) return 'derivation';
  if (record.class === 'dataset') return 'dataset';
  return record.class === 'recalled' || record.class === 'practice' ? 'recalled or practice' : 'outside print';
}

function catcherOfTest(file: string): Catcher {
  if (file.startsWith('verification/datasets/')) return 'dataset';
  // Lists of what was recalled or chosen, kept by hand.
  if (/^verification\/(?:rules|limits)\//u.test(file)) return 'recalled or practice';
  // Output of another program, which runs along.
  if (file === 'verification/oracles/psychrometrics.test.ts') return 'outside print';
  // Units are composed from the definitions of others, which is a derivation.
  return file.startsWith('verification/') || file === 'tests/quantity/units.test.ts' ? 'derivation' : 'own tests only';
}

export class Probe implements Hooks {
  private active: number | undefined;
  private shifted: string | undefined;
  private factor = 1;
  calls = 0;
  private most = Number.POSITIVE_INFINITY;
  touchedConstants = new Set<number>();
  touchedResults = new Set<string>();
  constructor(private readonly values: readonly number[]) {}

  readonly constant = (index: number): number => {
    // A changed constant can keep a search from ending; that is noticed too.
    if (++this.calls > this.most) throw new Error('does not end');
    this.touchedConstants.add(index);
    const value = this.values[index] as number;
    return index === this.active ? value * this.factor : value;
  };
  readonly result = (id: string, value: unknown): unknown => {
    this.touchedResults.add(id);
    return id === this.shifted ? scaled(value, this.factor) : value;
  };

  /** Allows a check far more calls than it needed before. */
  allow(calls: number): void {
    this.calls = 0;
    this.most = 20 * calls + 1e6;
  }

  forget(): void {
    this.calls = 0;
    this.most = Number.POSITIVE_INFINITY;
    this.touchedConstants = new Set();
    this.touchedResults = new Set();
  }

  set(change: { readonly constant?: number; readonly result?: string; readonly factor: number } | undefined): void {
    this.active = change?.constant;
    this.shifted = change?.result;
    this.factor = change?.factor ?? 1;
  }
}

function scaled(value: unknown, factor: number): unknown {
  if (typeof value === 'number') return value * factor;
  if (Array.isArray(value)) return value.map((item) => scaled(item, factor));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, scaled(inner, factor)]));
}

/** Every case and test that holds on unchanged code, with what it touches. */
export function checksOf(loaded: Loaded, probe: Probe, tests: readonly string[]): Check[] {
  const checks: Check[] = [];
  /** Keeps the first of the ways in which it holds. */
  const touch = (
    name: string,
    catcher: Catcher,
    file: string | undefined,
    ways: readonly Check['holds'][],
    must: boolean,
  ): void => {
    for (const holds of ways) {
      probe.forget();
      if (!holds(loaded)) continue;
      const { touchedConstants: constants, touchedResults: results, calls } = probe;
      checks.push({ name, catcher, file, holds, constants, results, calls });
      return;
    }
    if (must) throw new Error(`${name} does not hold on unchanged code`);
  };
  for (const reading of loaded.readCases()) {
    for (const record of reading.records) {
      const only: CaseFileReading = { file: reading.file, records: [record] };
      const [first] = loaded.runCases([only]);
      if (first === undefined) continue;
      const before = ranks(first);
      const holds = (given: Loaded): boolean => {
        try {
          const [found] = given.runCases([only]);
          return found !== undefined && !ranks(found).some((rank, index) => rank > (before[index] ?? -1));
        } catch {
          return false;
        }
      };
      touch(record.id, catcherOf(first), undefined, [holds], true);
    }
  }
  for (const file of tests) {
    const catcher = catcherOfTest(file);
    loaded.testsIn(file).forEach(({ name }, index) => {
      const brief = (given: Loaded): boolean => passes(() => given.testsIn(file)[index]?.run());
      // A test that counts what it met needs all its runs.
      const full = (given: Loaded): boolean => inFull(() => brief(given));
      touch(`${file}: ${name}`, catcher, file, [brief, full], catcher !== 'own tests only');
    });
  }
  return checks.sort((a, b) => Number(SLOW.test(a.name)) - Number(SLOW.test(b.name)));
}
