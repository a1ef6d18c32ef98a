import { formula, nonNegative } from '../formula/index.js';
import type { GaugePressure } from '../quantity/index.js';

/** What sets the highest line pressure. */
export type SealLimit = 'site' | 'strap' | 'fastener' | 'sheet' | 'pipe';

const limits = [
  ['siteLimit', 'site'],
  ['strapLimit', 'strap'],
  ['fastenerLimit', 'fastener'],
  ['sheetLimit', 'sheet'],
  ['pipeLimit', 'pipe'],
] as const satisfies readonly (readonly [string, SealLimit])[];

/** The lowest of the limits and its name. */
export interface HighestSealPressure {
  readonly pressure: GaugePressure;
  readonly governing: SealLimit;
}

export interface HighestPressureInput {
  readonly siteLimit: GaugePressure;
  readonly strapLimit: GaugePressure;
  readonly fastenerLimit: GaugePressure;
  readonly sheetLimit: GaugePressure;
  readonly pipeLimit: GaugePressure;
}

/**
 * Highest line pressure at which the seal may be attempted, and what sets it.
 *
 * $$p_{max} = \min(p_1, p_2, p_3, p_4, p_5)$$
 *
 * @param input.siteLimit p_1, the site's own limit for work on a live leak [Pa], >= 0; no default
 * @param input.strapLimit p_2, line pressure that the strap holds [Pa], >= 0
 * @param input.fastenerLimit p_3, line pressure that the fastener holds [Pa], >= 0
 * @param input.sheetLimit p_4, line pressure that the backing sheet carries over the hole [Pa], >= 0
 * @param input.pipeLimit p_5, line pressure at which the band reaches what the pipe may bear [Pa], >= 0
 * @returns the lowest limit [Pa] and its name; of equal ones the first, the site before all
 * @throws CalculationError `invalid-input`
 * @remarks Every limit is required: one that nobody worked out is not absent. The strengths come with their factors
 *   and with the low end of the tension.
 */
export function highestPressure(input: HighestPressureInput): HighestSealPressure {
  let [pressure, governing]: [number, SealLimit] = [input.siteLimit, 'site'];
  for (const [parameter, name] of limits) {
    const limit = input[parameter];
    nonNegative(limit, parameter, 'Pa');
    if (limit < pressure) [pressure, governing] = [limit, name];
  }
  return { pressure: pressure as GaugePressure, governing };
}

export const highestPressureFormula = /* @__PURE__ */ formula<HighestPressureInput, HighestSealPressure>({
  id: 'seal/highest-pressure',
  title: 'Highest line pressure for attempting the seal',
  search: ['how much pressure to seal against', 'leak'],
  compute: highestPressure,
  equation: { expression: 'min(p_1, p_2, p_3, p_4, p_5)' },
  inputs: {
    siteLimit: {
      symbol: 'p_1',
      kind: 'gauge pressure',
      name: "the site's own limit for work on a live leak",
      sample: [0, 10e6],
    },
    strapLimit: {
      symbol: 'p_2',
      kind: 'gauge pressure',
      name: 'line pressure that the strap holds',
      sample: [0, 10e6],
    },
    fastenerLimit: {
      symbol: 'p_3',
      kind: 'gauge pressure',
      name: 'line pressure that the fastener holds',
      sample: [0, 10e6],
    },
    sheetLimit: {
      symbol: 'p_4',
      kind: 'gauge pressure',
      name: 'line pressure that the backing sheet carries over the hole',
      sample: [0, 10e6],
    },
    pipeLimit: {
      symbol: 'p_5',
      kind: 'gauge pressure',
      name: 'line pressure at which the band reaches what the pipe may bear',
      sample: [0, 10e6],
    },
  },
  output: {
    pressure: { symbol: 'p_max', kind: 'gauge pressure', name: 'highest line pressure for attempting the seal' },
    governing: { symbol: 'governing', kind: 'choice', name: 'what sets it' },
  },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'sorting the limits' } },
  limits: [],
});
