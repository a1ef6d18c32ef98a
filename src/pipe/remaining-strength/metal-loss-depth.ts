import { atMost, formula, nonNegative, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface MetalLossDepthInput {
  readonly wallThickness: Length;
  readonly remainingWall: Length;
}

/**
 * Depth of a metal loss: the wall that is gone.
 *
 * $$d = t - t_r$$
 *
 * @param input.wallThickness  t, nominal wall [m], > 0
 * @param input.remainingWall  t_r, least wall left [m], >= 0 and <= t
 * @returns depth [m]
 * @throws CalculationError `invalid-input`
 * @see ASME B31G, which defines the depth so
 */
export function metalLossDepth(input: MetalLossDepthInput): Length {
  const { wallThickness: t, remainingWall } = input;
  positive(t, 'wallThickness', 'm');
  nonNegative(remainingWall, 'remainingWall', 'm');
  atMost(remainingWall, t, 'the nominal wall', 'remainingWall', 'm');
  return (t - remainingWall) as Length;
}

export const metalLossDepthFormula = /* @__PURE__ */ formula<MetalLossDepthInput, Length>({
  id: 'pipe/metal-loss-depth',
  title: 'Depth of a metal loss',
  search: ['wall loss', 'pit', 'corrosion', 'ut reading'],
  compute: metalLossDepth,
  equation: { expression: 't - t_r' },
  inputs: {
    wallThickness: { symbol: 't', kind: 'length', name: 'nominal wall', sample: [0.005, 0.03] },
    remainingWall: { symbol: 't_r', kind: 'length', name: 'least wall left', sample: [0, 0.005] },
  },
  output: { symbol: 'd', kind: 'length', name: 'depth' },
  sources: [{ key: 'asme-b31g', locator: 'definition of the depth' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [],
});
