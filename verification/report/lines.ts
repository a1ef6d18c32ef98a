import type { AnyFormula } from '../../src/formula/index.js';
import type { CaseClass } from '../case.js';
import type { CaseResult } from '../runner/judge.js';
import type { OwnRoute } from './own-routes.js';
import type { AncestorRow, Line } from './shape.js';

/**
 * Lines of evidence of a formula. Independent is what another hand published: a printed value, a dataset, a program. A derivation
 * that imports nothing under test is a line of this project's own and is counted apart. Whatever comes from one hand counts once.
 */

/** Sources that are one hand, for the formulas whose ids begin so. */
export const ancestors: readonly AncestorRow[] = [
  {
    sources: ['corrosion-package-tests', 'corrosion-analysis-tests', 'dnv-rp-f101'],
    formulas: 'pipe/dnv',
    ancestor: 'dnv-rp-f101',
    why: 'both programs start from the inputs of the examples in the appendix of the recommended practice, and their values may be its answers',
  },
  {
    sources: ['burst-benchmark-tests', 'benjamin-2016'],
    formulas: 'pipe/',
    ancestor: 'burst-benchmark-tests',
    why: 'the paper was seen only as that test suite quotes it',
  },
  {
    sources: ['cai-2022', 'burst tests'],
    formulas: 'pipe/',
    ancestor: 'cai-2022',
    why: 'the archive that prints the predictions is one of the two compilations from which the burst tests were read',
  },
  {
    sources: ['asme-b31g', 'ffs-validation-record'],
    formulas: 'pipe/b31g-allowable-length',
    ancestor: 'asme-b31g',
    why: 'the validation record copies the table of the standard',
  },
  {
    sources: ['api-579', 'open-ffs-implementation'],
    formulas: 'pipe/',
    ancestor: 'api-579',
    why: 'the program codes the procedures of the standard and may carry its examples',
  },
  {
    sources: ['ashrae-fundamentals-2017', 'psychrolib'],
    formulas: 'site/',
    ancestor: 'ashrae-fundamentals-2017',
    why: 'the program codes the equations of the handbook, and the handbook was seen as its tests quote it',
  },
];

export function ancestorOf(source: string, formula: string): string {
  const row = ancestors.find((each) => each.sources.includes(source) && formula.startsWith(each.formulas));
  return row?.ancestor ?? source;
}

const PRINTED = new Set<CaseClass>(['standard', 'handbook', 'library', 'web']);

/**
 * Whether a case can be a line: it shows a value and agrees without a tolerance or an explanation. A refusal shows a limit and
 * an inequality leaves a whole side open, so neither is one.
 */
function showsValue({ record, verdict, outcomes }: CaseResult): boolean {
  if (verdict !== 'agrees' && verdict !== 'agrees within the rounding of its inputs') return false;
  return !('refused' in record.expect) && outcomes.some(({ expected }) => !/^at (?:least|most) /u.test(expected));
}

/** A comparison that is not made of case records. */
export interface Comparison {
  readonly sort: 'dataset' | 'program';
  readonly formula: string;
  readonly source: string;
  readonly by: string;
}

/** What re-derives a formula in code: test files of verification/derivations that notice a change of its result. */
export type DerivationsOf = (formula: string) => readonly string[];

/** How the route of a case says that it shows no more. */
const ONLY = /shows the (?:arithmetic|comparison|logic) only/iu;

export function linesOf(
  { id }: AnyFormula,
  results: readonly CaseResult[],
  comparisons: readonly Comparison[],
  derivationsOf: DerivationsOf,
  routes: readonly OwnRoute[] = [],
): Line[] {
  const lines = new Map<string, Line>();
  const add = (line: Line): void => {
    const known = lines.get(line.from);
    if (known === undefined) lines.set(line.from, line);
    else {
      const arithmeticOnly = known.arithmeticOnly === true && line.arithmeticOnly === true;
      lines.set(line.from, {
        ...known,
        by: `${known.by}, ${line.by}`,
        ...('arithmeticOnly' in known ? { arithmeticOnly } : {}),
      });
    }
  };
  const own = results.filter((result) => result.record.formula === id && showsValue(result));
  for (const { record } of own) {
    // The right value behind an erratum is not the print of its source.
    if (record.source === null || record.erratum !== undefined) continue;
    const from = ancestorOf(record.source.key, id);
    if (PRINTED.has(record.class)) add({ sort: 'print', from, by: record.id });
    if (record.class === 'dataset') add({ sort: 'dataset', from, by: record.id });
  }
  for (const { sort, formula, source, by } of comparisons)
    if (formula === id) add({ sort, from: ancestorOf(source, id), by });
  // All derivations of one formula are of one hand, this project's, and count once.
  for (const { record } of own.filter(({ record: { class: of } }) => of === 'derivation'))
    add({ sort: 'derivation', from: 'derivation', by: record.id, arithmeticOnly: ONLY.test(record.route ?? '') });
  for (const by of derivationsOf(id)) {
    const here = routes.filter(({ file, formula }) => file === by && formula === id);
    const arithmeticOnly = here.length > 0 && here.every(({ shows }) => shows === 'arithmetic');
    add({ sort: 'derivation', from: 'derivation', by, arithmeticOnly });
  }
  return [...lines.values()];
}

/** What another hand published, each hand once. */
export const otherHands = (lines: readonly Line[]): readonly Line[] =>
  lines.filter(({ sort }) => sort !== 'derivation');

export const hasOwnRoute = (lines: readonly Line[]): boolean => lines.some(({ sort }) => sort === 'derivation');

/** Whether nothing more is known of a formula than that its arithmetic is done right. */
export const isArithmeticOnly = (lines: readonly Line[]): boolean =>
  lines.length > 0 && lines.every(({ arithmeticOnly }) => arithmeticOnly === true);
