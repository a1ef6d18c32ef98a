import { formula, properFraction, wholeNumber } from '../formula/index.js';
import { countDown } from '../numeric/index.js';
import type { Ratio } from '../quantity/index.js';

export interface MinimumLayersInput {
  readonly overlap: Ratio;
}

/**
 * Least number of layers at any place inside one pass of overlapped tape: the count that strength may rely on.
 *
 * $$n_1 = \left\lfloor \frac{1}{1 - o} \right\rfloor$$
 *
 * @param input.overlap o, overlap of neighbouring turns, as a part of the tape width [1], from 0 up to, not
 *   including, 1
 * @returns least layer count, whole
 * @throws CalculationError `invalid-input`
 * @remarks Holds one axial tape width in from each edge. The slack of 1e-9 in the count takes the float of 2/3 as the
 *   overlap it stands for, which gives 3.
 * @see Brute-force count in verification/derivations
 */
export function minimumLayers(input: MinimumLayersInput): number {
  const { overlap: o } = input;
  properFraction(o, 'overlap');
  const n = countDown(1 / (1 - o));
  wholeNumber(n, 1, 'layers per pass');
  return n;
}

/**
 * Whether the overlap holds its layer count only by less than 1 % of the tape width: a slip of 1 mm on a 100 mm tape
 * then lays a stripe that lacks one layer.
 */
export function minimumLayersWithoutMargin(input: MinimumLayersInput): boolean {
  return input.overlap - (1 - 1 / minimumLayers(input)) < 0.01;
}

export const minimumLayersFormula = /* @__PURE__ */ formula<MinimumLayersInput, number>({
  id: 'wrap/minimum-layers',
  title: 'Least number of layers in one pass',
  search: ['overlap', 'half lap', 'how many layers'],
  compute: minimumLayers,
  equation: {
    expression: 'floor(n_m + 1e-9 * n_m)',
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
  output: { symbol: 'n_1', kind: 'count', name: 'least layers in one pass' },
  sources: [{ key: 'tape-practice-note', locator: 'overlap of 50 to 55 %' }],
  evidence: {
    form: { tag: 'chosen', derived: 'brute-force count of the turns over each point' },
    minimumLayersWithoutMargin: { tag: 'chosen' },
  },
  limits: [
    {
      sort: 'note',
      text: 'the overlap leaves less than 1 % of the tape width before a layer is lost; specify the overlap as a minimum with a positive tolerance',
      beyond: minimumLayersWithoutMargin,
      source: { key: 'tape-practice-note', locator: 'overlap of 50 to 55 %' },
    },
  ],
});
