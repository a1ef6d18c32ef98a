import { formula, properFraction, wholeNumber } from '../formula/index.js';
import { countUp } from '../numeric/index.js';
import type { Ratio } from '../quantity/index.js';

export interface MaximumLayersInput {
  readonly overlap: Ratio;
}

/**
 * Greatest number of layers at any place inside one pass of overlapped tape, for clearances and cure thickness.
 *
 * $$n_2 = \left\lceil \frac{1}{1 - o} \right\rceil$$
 *
 * @param input.overlap o, overlap of neighbouring turns, as a part of the tape width [1], from 0 up to, not
 *   including, 1
 * @returns greatest layer count, whole
 * @throws CalculationError `invalid-input`
 */
export function maximumLayers(input: MaximumLayersInput): number {
  const { overlap: o } = input;
  properFraction(o, 'overlap');
  const n = countUp(1 / (1 - o));
  wholeNumber(n, 1, 'layers per pass');
  return n;
}

export const maximumLayersFormula = /* @__PURE__ */ formula<MaximumLayersInput, number>({
  id: 'wrap/maximum-layers',
  title: 'Greatest number of layers in one pass',
  search: ['overlap', 'how many layers'],
  compute: maximumLayers,
  equation: {
    expression: 'ceil(n_m - 1e-9 * n_m)',
    where: [{ symbol: 'n_m', kind: 'number', expression: '1 / (1 - o)' }],
  },
  inputs: {
    overlap: {
      symbol: 'o',
      kind: 'ratio',
      name: 'overlap of neighbouring turns, as a part of the tape width',
      sample: [0, 0.8],
    },
  },
  output: { symbol: 'n_2', kind: 'count', name: 'greatest layers in one pass' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'brute-force count of the turns over each point' } },
  limits: [],
});
