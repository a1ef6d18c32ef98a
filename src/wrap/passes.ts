import { formula, properFraction, wholeNumber } from '../formula/index.js';
import { countUp } from '../numeric/index.js';
import type { Ratio } from '../quantity/index.js';
import { leastOverlap } from './least-overlap.js';
import { minimumLayers } from './minimum-layers.js';

export interface PassesInput {
  readonly requiredLayers: number;
  readonly overlap: Ratio;
}

/**
 * Passes of overlapped tape needed to lay a number of layers everywhere, by the least count of a pass, never the
 * mean.
 *
 * $$N = \left\lceil \frac{n}{n_1} \right\rceil$$
 *
 * @param input.requiredLayers n_r, layers that the design requires, whole, 1 or above
 * @param input.overlap o, overlap of neighbouring turns, as a part of the tape width [1], from 0 up to, not
 *   including, 1
 * @returns number of passes, whole
 * @throws CalculationError `invalid-input`
 */
export function passes(input: PassesInput): number {
  const { requiredLayers: nR, overlap: o } = input;
  wholeNumber(nR, 1, 'requiredLayers');
  properFraction(o, 'overlap');
  const n = countUp(nR / minimumLayers({ overlap: o }));
  wholeNumber(n, 1, 'passes');
  return n;
}

/**
 * Whether widening the overlap by at most 5 % of the tape width reaches the next layer count and so saves a pass.
 * The overlap to lay is `leastOverlap({ layers: minimumLayers({ overlap }) + 1 })`.
 */
export function passesSavedBySlightlyMoreOverlap(input: PassesInput): boolean {
  const { requiredLayers, overlap } = input;
  const next = leastOverlap({ layers: minimumLayers({ overlap }) + 1 });
  return next - overlap <= 0.05 && passes({ requiredLayers, overlap: next }) < passes(input);
}

export const passesFormula = /* @__PURE__ */ formula<PassesInput, number>({
  id: 'wrap/passes',
  title: 'Passes of tape',
  search: ['how many wraps', 'layers'],
  compute: passes,
  equation: {
    expression: 'ceil(q - 1e-9 * max(1, q))',
    where: [
      { symbol: 'n_m', kind: 'number', expression: '1 / (1 - o)' },
      { symbol: 'n_1', kind: 'number', expression: 'floor(n_m + 1e-9 * n_m)' },
      { symbol: 'q', kind: 'number', expression: 'n_r / n_1' },
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
  output: { symbol: 'N', kind: 'count', name: 'passes' },
  sources: [],
  evidence: {
    form: { tag: 'chosen', derived: 'brute-force count of the turns over each point' },
    passesSavedBySlightlyMoreOverlap: { tag: 'chosen' },
  },
  limits: [
    {
      sort: 'note',
      text: 'at most 5 % more of the tape width as overlap reaches the next layer count and saves at least one pass',
      beyond: passesSavedBySlightlyMoreOverlap,
    },
  ],
});
