import { formula, properFraction } from '../formula/index.js';
import type { Ratio } from '../quantity/index.js';

export interface MeanLayersInput {
  readonly overlap: Ratio;
}

/**
 * Mean number of layers that one pass of overlapped tape leaves: tape area over pipe area. For quantities only.
 *
 * $$n_m = \frac{1}{1 - o}$$
 *
 * @param input.overlap o, overlap of neighbouring turns, as a part of the tape width [1], from 0 up to, not
 *   including, 1
 * @returns mean layer count, a plain number
 * @throws CalculationError `invalid-input`
 * @remarks Never a basis for strength: at 49 % overlap the mean is 1.96 and stripes of a single layer run along the
 *   pipe. A rule that multiplies the area by 1 + o is wrong: at 55 % the factor is 2.22, not 1.55.
 */
export function meanLayers(input: MeanLayersInput): number {
  const { overlap: o } = input;
  properFraction(o, 'overlap');
  return 1 / (1 - o);
}

export const meanLayersFormula = /* @__PURE__ */ formula<MeanLayersInput, number>({
  id: 'wrap/mean-layers',
  title: 'Mean layers in one pass',
  search: ['overlap', 'how many layers'],
  compute: meanLayers,
  equation: { expression: '1 / (1 - o)' },
  inputs: {
    overlap: {
      symbol: 'o',
      kind: 'ratio',
      name: 'overlap of neighbouring turns, as a part of the tape width',
      sample: [0, 0.8],
    },
  },
  output: { symbol: 'n_m', kind: 'number', name: 'mean layers in one pass' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'tape area equals layers times wrapped area' } },
  limits: [],
});
