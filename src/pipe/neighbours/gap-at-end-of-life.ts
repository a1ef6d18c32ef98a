import { formula, nonNegative } from '../../formula/index.js';
import type { CorrosionRate, Length, Time } from '../../quantity/index.js';

export interface GapAtEndOfLifeInput {
  readonly gap: Length;
  readonly rate: CorrosionRate;
  readonly life: Time;
}

/**
 * Sound metal left between two metal losses by the end of life, both of which grow towards each other; 0 once they meet.
 *
 * $$g_{eol} = \max(g - 2 r\,\tau,\ 0)$$
 *
 * @param input.gap   g, between their edges today [m], >= 0
 * @param input.rate  r, growth at each edge [m/s], >= 0
 * @param input.life  tau, design life of the repair [s], >= 0
 * @returns gap at end of life [m]
 * @throws CalculationError `invalid-input`
 * @see common practice
 */
export function gapAtEndOfLife(input: GapAtEndOfLifeInput): Length {
  const { gap: g, rate: r, life } = input;
  nonNegative(g, 'gap', 'm');
  nonNegative(r, 'rate', 'm/s');
  nonNegative(life, 'life', 's');
  return Math.max(g - 2 * (r * life), 0) as Length;
}

export const gapAtEndOfLifeFormula = /* @__PURE__ */ formula<GapAtEndOfLifeInput, Length>({
  id: 'pipe/gap-at-end-of-life',
  title: 'Gap between two losses at the end of life',
  compute: gapAtEndOfLife,
  equation: { expression: 'max(g - 2 * r * T, 0 * g)' },
  inputs: {
    gap: { symbol: 'g', kind: 'length', name: 'gap today', sample: [0, 1] },
    rate: { symbol: 'r', kind: 'corrosion rate', name: 'growth at each edge', sample: [0, 2e-11] },
    life: { symbol: 'T', kind: 'time', name: 'design life of the repair', sample: [0, 1e9] },
  },
  output: { symbol: 'g_eol', kind: 'length', name: 'gap at the end of life' },
  sources: [],
  evidence: { form: { tag: 'practice' } },
  limits: [],
});
