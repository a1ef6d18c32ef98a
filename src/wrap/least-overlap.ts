import { formula, wholeNumber } from '../formula/index.js';
import type { Ratio } from '../quantity/index.js';

export interface LeastOverlapInput {
  readonly layers: number;
}

/**
 * Least overlap at which every place inside a pass carries the wanted number of layers.
 *
 * $$o_n = 1 - \frac{1}{n}$$
 *
 * @param input.layers n, layers wanted in one pass, whole, 1 or above
 * @returns least overlap [1]
 * @throws CalculationError `invalid-input`
 * @remarks A minimum: add the tolerance of the hand that lays it.
 */
export function leastOverlap(input: LeastOverlapInput): Ratio {
  const { layers: n } = input;
  wholeNumber(n, 1, 'layers');
  return (1 - 1 / n) as Ratio;
}

export const leastOverlapFormula = /* @__PURE__ */ formula<LeastOverlapInput, Ratio>({
  id: 'wrap/least-overlap',
  title: 'Least overlap for a layer count',
  search: ['50 percent overlap', 'half lap'],
  compute: leastOverlap,
  equation: { expression: '1 - 1 / n' },
  inputs: {
    layers: { symbol: 'n', kind: 'count', name: 'layers wanted in one pass', sample: [1, 8] },
  },
  output: { symbol: 'o_n', kind: 'ratio', name: 'least overlap' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'inverse of the least layer count' } },
  limits: [],
});
