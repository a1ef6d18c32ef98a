import { formula, nonNegative } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface GapPastNeighboursInput {
  readonly gap: Length;
  readonly reach: Length;
}

/**
 * Gap that is left to whatever stands beside a metal loss, once the loss reaches farther by the neighbours that act with it;
 * 0 where they reach as far.
 *
 * $$g' = \max(g - r,\ 0)$$
 *
 * @param input.gap    g, from the edge of the loss [m], >= 0
 * @param input.reach  r, of its neighbours beyond that edge [m], >= 0
 * @returns gap [m]
 * @throws CalculationError `invalid-input`
 * @remarks On which side each lies is not asked: all count as lying on the same one.
 * @see common practice
 */
export function gapPastNeighbours(input: GapPastNeighboursInput): Length {
  const { gap: g, reach: r } = input;
  nonNegative(g, 'gap', 'm');
  nonNegative(r, 'reach', 'm');
  return Math.max(g - r, 0) as Length;
}

export const gapPastNeighboursFormula = /* @__PURE__ */ formula<GapPastNeighboursInput, Length>({
  id: 'pipe/gap-past-neighbours',
  title: 'Gap left beside neighbours that act with a loss',
  compute: gapPastNeighbours,
  equation: { expression: 'max(g - r, 0 * g)' },
  inputs: {
    gap: { symbol: 'g', kind: 'length', name: 'gap from the edge of the loss', sample: [0, 2] },
    reach: { symbol: 'r', kind: 'length', name: 'reach of the neighbours', sample: [0, 1] },
  },
  output: { symbol: 'g_n', kind: 'length', name: 'gap left' },
  sources: [],
  evidence: { form: { tag: 'practice' } },
  limits: [],
});
