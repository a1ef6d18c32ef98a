import { formula, properFraction } from '../../formula/index.js';
import type { Ratio } from '../../quantity/index.js';
import { leastOverlap } from '../least-overlap.js';
import { minimumLayers } from '../minimum-layers.js';

/** One layer more in each pass, and the least overlap that lays it. */
export interface OverlapForNextLayer {
  readonly overlap: Ratio;
  readonly layers: number;
}

export interface OverlapForNextLayerInput {
  readonly overlap: Ratio;
}

/**
 * Least overlap that lays one layer more in each pass than the overlap at hand.
 *
 * $$o' = 1 - \frac{1}{n_1 + 1}, \qquad n_1 = \left\lfloor \frac{1}{1 - o} \right\rfloor$$
 *
 * @param input.overlap o, overlap of neighbouring turns, as a part of the tape width [1], from 0 up to, not
 *   including, 1
 * @returns that overlap [1], and the layers of a pass at it
 * @throws CalculationError `invalid-input`
 */
export function overlapForNextLayer(input: OverlapForNextLayerInput): OverlapForNextLayer {
  const { overlap: o } = input;
  properFraction(o, 'overlap');
  const layers = minimumLayers({ overlap: o }) + 1;
  return { overlap: leastOverlap({ layers }), layers };
}

export const overlapForNextLayerFormula = /* @__PURE__ */ formula<OverlapForNextLayerInput, OverlapForNextLayer>({
  id: 'wrap/overlap-for-next-layer',
  title: 'Overlap that lays one layer more',
  compute: overlapForNextLayer,
  equation: {
    expression: '1 - 1 / (n_1 + 1)',
    where: [
      { symbol: 'n_m', kind: 'number', expression: '1 / (1 - o)' },
      { symbol: 'n_1', kind: 'number', expression: 'floor(n_m + 1e-9 * n_m)' },
    ],
  },
  inputs: {
    overlap: {
      symbol: 'o',
      kind: 'ratio',
      name: 'overlap of neighbouring turns, as a part of the tape width',
      sample: [0, 0.8],
    },
  },
  output: {
    overlap: { symbol: 'o_2', kind: 'ratio', name: 'least overlap for one layer more' },
    layers: { symbol: 'n_2', kind: 'count', name: 'layers in one pass at that overlap' },
  },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'inverse of the least layer count' } },
  limits: [],
});
