import { formula, properFraction, wholeNumber } from '../formula/index.js';
import type { Ratio } from '../quantity/index.js';
import { minimumLayers } from './minimum-layers.js';
import { passes } from './passes.js';

export interface LayersOfPassesInput {
  readonly requiredLayers: number;
  readonly overlap: Ratio;
}

/**
 * Layers that lie everywhere once whole passes of overlapped tape have laid at least as many as are required: each pass lays
 * all of its own.
 *
 * $$n = N n_1, \quad N = \left\lceil \frac{n_r}{n_1} \right\rceil$$
 *
 * @param input.requiredLayers n_r, layers that the design requires, whole, 1 or above
 * @param input.overlap o, overlap of neighbouring turns, as a part of the tape width [1], from 0 up to, not
 *   including, 1
 * @returns number of layers, whole, n_r or above
 * @throws CalculationError `invalid-input`
 */
export function layersOfPasses(input: LayersOfPassesInput): number {
  const { requiredLayers: nR, overlap: o } = input;
  wholeNumber(nR, 1, 'requiredLayers');
  properFraction(o, 'overlap');
  const n = passes({ requiredLayers: nR, overlap: o }) * minimumLayers({ overlap: o });
  wholeNumber(n, 1, 'layers');
  return n;
}

export const layersOfPassesFormula = /* @__PURE__ */ formula<LayersOfPassesInput, number>({
  id: 'wrap/layers-of-passes',
  title: 'Layers that whole passes of tape lay',
  search: ['how many wraps', 'more layers than required'],
  compute: layersOfPasses,
  equation: {
    expression: 'N * n_1',
    where: [
      { symbol: 'n_m', kind: 'number', expression: '1 / (1 - o)' },
      { symbol: 'n_1', kind: 'number', expression: 'floor(n_m + 1e-9 * n_m)' },
      { symbol: 'q', kind: 'number', expression: 'n_r / n_1' },
      { symbol: 'N', kind: 'number', expression: 'ceil(q - 1e-9 * max(1, q))' },
    ],
  },
  inputs: {
    requiredLayers: { symbol: 'n_r', kind: 'count', name: 'layers that the design requires', sample: [1, 40] },
    overlap: {
      symbol: 'o',
      kind: 'ratio',
      name: 'overlap of neighbouring turns, as a part of the tape width',
      sample: [0, 0.8],
    },
  },
  output: { symbol: 'n', kind: 'count', name: 'layers' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'brute-force count of the turns over each point' } },
  limits: [],
});
