import { atMost, formula, listOfRows, positive, refuse } from '../../formula/index.js';
import type { Time } from '../../quantity/index.js';
import type { PerformanceRow } from '../../rules/index.js';

export interface PerformanceFactorInput {
  readonly table: readonly PerformanceRow[];
  readonly designLife: Time;
}

/** Factor on the long-term strength, and the life column it stands in. */
export interface PerformanceFactor {
  readonly factor: number;
  readonly lifeColumn: Time;
}

/**
 * Factor on the long-term strength: the column of the shortest tabulated life that covers the design life.
 *
 * @param input.table       rows of the rule set for this class and kind of test, in any order
 * @param input.designLife  L [s], > 0, at most the longest life of the table
 * @returns the factor, and the life of its column
 * @throws CalculationError `invalid-input`; `outside-validity` for a life longer than the table
 * @remarks A life between two columns takes the longer one; nothing is interpolated.
 * @see ISO 24817:2017, 7.5.6; ASME PCC-2, Eq. 11, as recalled
 */
export function performanceFactor(input: PerformanceFactorInput): PerformanceFactor {
  const { table, designLife: L } = input;
  positive(L, 'designLife', 's');
  listOfRows(table, 'table');
  let row: PerformanceRow | undefined;
  let longest = 0;
  for (const candidate of table) {
    positive(candidate.life, 'table life', 's');
    positive(candidate.factor, 'table factor', '');
    atMost(candidate.factor, 1, 'one', 'table factor', '');
    longest = Math.max(longest, candidate.life);
    if (candidate.life >= L && (row === undefined || candidate.life < row.life)) row = candidate;
  }
  if (row === undefined) {
    return refuse({
      code: 'outside-validity',
      parameter: 'designLife',
      value: L,
      unit: 's',
      constraint: 'must be at most the longest life of the table, {limit}',
      limit: longest,
    });
  }
  return { factor: row.factor, lifeColumn: row.life };
}

export const performanceFactorFormula = /* @__PURE__ */ formula<PerformanceFactorInput, PerformanceFactor>({
  id: 'laminate/performance-factor',
  title: 'Factor on the long-term strength',
  search: ['creep', 'survival test'],
  compute: performanceFactor,
  equation: { algorithm: 'the row of the shortest tabulated life that is not below the design life' },
  inputs: {
    table: {
      symbol: 'table',
      kind: 'list',
      name: 'factors of the rule set',
      columns: { life: 'time', factor: 'number' },
    },
    designLife: { symbol: 'L', kind: 'time', name: 'design life', sample: [1e7, 6e8] },
  },
  output: {
    factor: { symbol: 'f_perf', kind: 'number', name: 'factor on the long-term strength' },
    lifeColumn: { symbol: 'L_col', kind: 'time', name: 'life of the column' },
  },
  sources: [
    { key: 'iso-24817', locator: '7.5.6, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, Eq. 11, as recalled' },
  ],
  evidence: { form: { tag: 'recalled' } },
  limits: [{ sort: 'stop', text: 'the table ends at its longest life' }],
});
