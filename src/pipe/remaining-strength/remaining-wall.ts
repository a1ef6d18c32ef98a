import { atMost, formula, nonNegative, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface RemainingWallInput {
  readonly wallThickness: Length;
  readonly defectDepth: Length;
}

/**
 * Wall that a metal loss leaves.
 *
 * $$t_r = t - d$$
 *
 * @param input.wallThickness  t, nominal wall [m], > 0
 * @param input.defectDepth    d, depth of the loss [m], >= 0 and <= t
 * @returns remaining wall [m]
 * @throws CalculationError `invalid-input`
 * @see ASME B31G, which defines the depth so
 */
export function remainingWall(input: RemainingWallInput): Length {
  const { wallThickness: t, defectDepth: d } = input;
  positive(t, 'wallThickness', 'm');
  nonNegative(d, 'defectDepth', 'm');
  atMost(d, t, 'the nominal wall', 'defectDepth', 'm');
  return (t - d) as Length;
}

export const remainingWallFormula = /* @__PURE__ */ formula<RemainingWallInput, Length>({
  id: 'pipe/remaining-wall',
  title: 'Wall that a metal loss leaves',
  search: ['wall loss', 'corrosion', 'thinning', 'ut reading'],
  compute: remainingWall,
  equation: { expression: 't - d' },
  inputs: {
    wallThickness: { symbol: 't', kind: 'length', name: 'nominal wall', sample: [0.005, 0.03] },
    defectDepth: { symbol: 'd', kind: 'length', name: 'depth of the loss', sample: [0, 0.005] },
  },
  output: { symbol: 't_r', kind: 'length', name: 'remaining wall' },
  sources: [{ key: 'asme-b31g', locator: 'definition of the depth' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [],
});
