import { finite, formula, nonNegative } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface NeighbourReachInput {
  readonly gap: Length;
  readonly extent: Length;
}

/**
 * How far a neighbouring metal loss reaches beyond the edge of the one beside it, along the pipe or round it.
 *
 * $$r = g + e$$
 *
 * @param input.gap     g, of sound metal between the two [m], >= 0
 * @param input.extent  e, of the neighbour [m], >= 0
 * @returns reach [m]
 * @throws CalculationError `invalid-input`
 * @see common practice
 */
export function neighbourReach(input: NeighbourReachInput): Length {
  const { gap: g, extent: e } = input;
  nonNegative(g, 'gap', 'm');
  nonNegative(e, 'extent', 'm');
  const reach = g + e;
  finite(reach, 'reach', 'm');
  return reach as Length;
}

export const neighbourReachFormula = /* @__PURE__ */ formula<NeighbourReachInput, Length>({
  id: 'pipe/neighbour-reach',
  title: 'Reach of a neighbouring loss',
  compute: neighbourReach,
  equation: { expression: 'g + e' },
  inputs: {
    gap: { symbol: 'g', kind: 'length', name: 'gap to the neighbour', sample: [0, 1] },
    extent: { symbol: 'e', kind: 'length', name: 'extent of the neighbour', sample: [0, 1] },
  },
  output: { symbol: 'r', kind: 'length', name: 'reach of the neighbour' },
  sources: [],
  evidence: { form: { tag: 'practice' } },
  limits: [],
});
