import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { CorrosionRate, Length, Time } from '../../quantity/index.js';

export interface HoleAtEndOfLifeInput {
  readonly holeDiameter: Length;
  readonly corrosionRate: CorrosionRate;
  readonly designLife: Time;
}

/**
 * Diameter of a through-wall hole at the end of the design life, when its rim goes on corroding on all sides.
 *
 * $$d = d_0 + 2 r L$$
 *
 * @param input.holeDiameter   d_0, of the smallest circle round the hole found today [m], > 0
 * @param input.corrosionRate  r, at which the rim recedes [m/s], >= 0; 0 only where the corrosion is surely stopped
 * @param input.designLife     L [s], > 0
 * @returns hole diameter at the end of life [m]
 * @throws CalculationError `invalid-input`
 * @remarks Own form: the rim is taken to recede on both sides at the rate of the wall.
 */
export function holeAtEndOfLife(input: HoleAtEndOfLifeInput): Length {
  const { holeDiameter: d0, corrosionRate: r, designLife: L } = input;
  positive(d0, 'holeDiameter', 'm');
  nonNegative(r, 'corrosionRate', 'm/s');
  positive(L, 'designLife', 's');
  const d = d0 + 2 * r * L;
  finite(d, 'hole diameter at the end of life', 'm');
  return d as Length;
}

export const holeAtEndOfLifeFormula = /* @__PURE__ */ formula<HoleAtEndOfLifeInput, Length>({
  id: 'laminate/hole-at-end-of-life',
  title: 'Hole diameter at the end of life',
  search: ['leak', 'pinhole', 'growth'],
  compute: holeAtEndOfLife,
  equation: { expression: 'd_0 + 2 * r * L' },
  inputs: {
    holeDiameter: { symbol: 'd_0', kind: 'length', name: 'hole diameter today', sample: [0.001, 0.05] },
    corrosionRate: { symbol: 'r', kind: 'corrosion rate', name: 'rate at which the rim recedes', sample: [0, 3e-11] },
    designLife: { symbol: 'L', kind: 'time', name: 'design life', sample: [3e7, 6.3e8] },
  },
  output: { symbol: 'd', kind: 'length', name: 'hole diameter at the end of life' },
  sources: [],
  evidence: { form: { tag: 'chosen' } },
  limits: [],
});
