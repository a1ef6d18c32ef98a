import { finite, formula } from '../../formula/index.js';
import type { Ratio } from '../../quantity/index.js';
import { type MixingRatioErrorInput, mixingRatioError } from './mixing-ratio-error.js';

/**
 * How far the hardener of a batch is off: above 0 too much, below 0 too little.
 *
 * $$e = \frac{m_B P_A}{m_A P_B} - 1$$
 *
 * @param input.massA   m_A, mass of A as weighed [kg], > 0
 * @param input.massB   m_B, mass of B as weighed [kg], > 0
 * @param input.partsA  P_A, parts of A by mass, > 0
 * @param input.partsB  P_B, parts of B by mass, > 0
 * @returns deviation as a part of the hardener that was due [1]
 * @throws CalculationError `invalid-input`
 */
export function hardenerDeviation(input: MixingRatioErrorInput): Ratio {
  const e = mixingRatioError(input) - 1;
  finite(e, 'deviation', '');
  return e as Ratio;
}

export const hardenerDeviationFormula = /* @__PURE__ */ formula<MixingRatioErrorInput, Ratio>({
  id: 'resin/hardener-deviation',
  title: 'How far the hardener of a batch is off',
  search: ['off ratio', 'mix ratio'],
  compute: hardenerDeviation,
  equation: { expression: 'm_B * P_A / (m_A * P_B) - 1' },
  inputs: {
    massA: { symbol: 'm_A', kind: 'mass', name: 'mass of A as weighed', sample: [0.1, 10] },
    massB: { symbol: 'm_B', kind: 'mass', name: 'mass of B as weighed', sample: [0.1, 10] },
    partsA: { symbol: 'P_A', kind: 'number', name: 'parts of A by mass', sample: [1, 100] },
    partsB: { symbol: 'P_B', kind: 'number', name: 'parts of B by mass', sample: [1, 100] },
  },
  output: { symbol: 'e', kind: 'ratio', name: 'deviation of the hardener' },
  sources: [],
  evidence: { form: { tag: 'practice' } },
  limits: [],
});
