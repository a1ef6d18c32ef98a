import { existsSync, readFileSync } from 'node:fs';
import type { RepairDesign } from '../../src/repair/index.js';
import { SEED } from '../oracles/random.js';
import type { Outcome, Violation } from './tally.js';

/** What a long run of the laws found, as it is committed. */
export interface LawsSummary {
  readonly seed: number;
  readonly cases: number;
  /** What each case is drawn by: a generator of this seed for each of these names. */
  readonly draws: string;
  readonly verdicts: Readonly<Record<string, number>>;
  /** The same as parts of all cases. */
  readonly shares: Readonly<Record<string, number>>;
  /** Designs that were made, by kind of defect, method, form of the material and rule set. */
  readonly designed: Readonly<Record<string, Readonly<Record<string, number>>>>;
  /** Pairs of a case and a worse one, by law, and how many of them were designed both. */
  readonly laws: Readonly<Record<string, { readonly pairs: number; readonly bothDesigned: number }>>;
  readonly asBuilt: Readonly<Record<string, number>>;
  readonly violations: number;
  readonly open: Readonly<Record<string, { readonly times: number; readonly because: string; readonly first: string }>>;
}

export const lawsSummaryPath = new URL('summary.json', import.meta.url);

export function readLawsSummary(): LawsSummary | undefined {
  return existsSync(lawsSummaryPath) ? JSON.parse(readFileSync(lawsSummaryPath, 'utf8')) : undefined;
}

type Counts = Record<string, number>;
type Groups = Record<string, Counts>;

function count(into: Counts, name: string): void {
  into[name] = (into[name] ?? 0) + 1;
}

/** How a design is told apart from others. */
function groupsOf({ case: { defect, wrap, basis }, ...design }: RepairDesign): Readonly<Record<string, string>> {
  if (design.verdict !== 'designed') return {};
  const leaks = design.found.throughWall ? (design.seal === 'none' ? 'leak' : 'sealed leak') : 'part-wall';
  return { 'defect stated': defect.kind, 'designed as': leaks, method: design.laminate.method, form: wrap.form, basis };
}

/** Adds up outcomes; a share of a run is a tally too, and two of them add up. */
export class Tally {
  cases = 0;
  readonly verdicts: Counts = {};
  readonly designed: Groups = {};
  readonly pairs: Counts = {};
  readonly bothDesigned: Counts = {};
  readonly asBuilt: Counts = {};
  readonly violations: Violation[] = [];

  add({ design, worsened, asBuilt, violations }: Outcome): void {
    this.cases += 1;
    this.violations.push(...violations);
    if (design === undefined) return;
    count(this.verdicts, design.verdict);
    for (const [group, name] of Object.entries(groupsOf(design))) {
      this.designed[group] ??= {};
      count(this.designed[group] ?? {}, name);
    }
    for (const { law, applies, after } of worsened) {
      if (!applies) continue;
      count(this.pairs, law);
      if (design.verdict === 'designed' && after?.verdict === 'designed') count(this.bothDesigned, law);
    }
    if (asBuilt !== undefined) count(this.asBuilt, asBuilt);
  }

  /** Takes in what another process counted. */
  take(
    other: Pick<Tally, 'cases' | 'verdicts' | 'designed' | 'pairs' | 'bothDesigned' | 'asBuilt' | 'violations'>,
  ): void {
    const sum = (into: Counts, from: Counts): void => {
      for (const [name, value] of Object.entries(from)) into[name] = (into[name] ?? 0) + value;
    };
    this.cases += other.cases;
    for (const key of ['verdicts', 'pairs', 'bothDesigned', 'asBuilt'] as const) sum(this[key], other[key]);
    for (const [group, counts] of Object.entries(other.designed)) {
      this.designed[group] ??= {};
      sum(this.designed[group] ?? {}, counts);
    }
    this.violations.push(...other.violations);
  }

  summary(): LawsSummary {
    const sorted = <T>(record: Readonly<Record<string, T>>): Record<string, T> =>
      Object.fromEntries(Object.entries(record).sort(([a], [b]) => (a < b ? -1 : 1)));
    const open: Record<string, { times: number; because: string; first: string }> = {};
    for (const { draw, law, what, open: because } of this.violations.toSorted((a, b) => a.draw - b.draw)) {
      if (because === undefined) continue;
      const name = `${law}: ${what.split(':')[0]}`;
      const known = open[name];
      if (known === undefined) open[name] = { times: 1, because, first: `draw ${draw}, ${what}` };
      else known.times += 1;
    }
    const laws = Object.entries(this.pairs).map(
      ([law, pairs]) => [law, { pairs, bothDesigned: this.bothDesigned[law] ?? 0 }] as const,
    );
    return {
      seed: SEED,
      cases: this.cases,
      draws: `"law 0" to "law ${this.cases - 1}"`,
      verdicts: sorted(this.verdicts),
      shares: sorted(
        Object.fromEntries(Object.entries(this.verdicts).map(([name, times]) => [name, times / this.cases])),
      ),
      designed: sorted(
        Object.fromEntries(Object.entries(this.designed).map(([group, counts]) => [group, sorted(counts)])),
      ),
      laws: sorted(Object.fromEntries(laws)),
      asBuilt: sorted(this.asBuilt),
      violations: this.violations.filter(({ open: because }) => because === undefined).length,
      open: sorted(open),
    };
  }
}
