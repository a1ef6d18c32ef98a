import { atMost, finite, formula, nonNegative, positive, within } from '../../formula/index.js';
import type { Angle, Force } from '../../quantity/index.js';

export interface BandTensionInput {
  readonly force: Force;
  readonly halfAngle: Angle;
  readonly factor: number;
  readonly bands?: number | undefined;
}

/**
 * Tension in each band, at the pad, that presses the pad on with a stated multiple of the force of the leak.
 *
 * $$T = \frac{f F}{2 n \sin\varphi}$$
 *
 * @param input.force F, force of the leak on the wetted pad [N], >= 0
 * @param input.halfAngle phi, half-angle of the pad on the pipe [rad], > 0, at most pi/2
 * @param input.factor f, factor on the force of the leak, 1 or more; no default
 * @param input.bands n, bands over the pad, `bandsOverPad`, > 0; 1 when not given
 * @returns tension in each band at the pad [N]
 * @throws CalculationError `invalid-input`
 * @remarks Tension at the pad: friction takes part of what the fastener pulls on the way there.
 */
export function bandTension(input: BandTensionInput): Force {
  const { force: F, halfAngle: phi, factor: f, bands: n = 1 } = input;
  nonNegative(F, 'force', 'N');
  positive(phi, 'halfAngle', 'rad');
  atMost(phi, Math.PI / 2, 'a quarter turn', 'halfAngle', 'rad');
  within(f, 1, 100, 'factor', '');
  positive(n, 'bands', '');
  const tension = (f * F) / (2 * n * Math.sin(phi));
  finite(tension, 'tension', 'N');
  return tension as Force;
}

export const bandTensionFormula = /* @__PURE__ */ formula<BandTensionInput, Force>({
  id: 'seal/band-tension',
  title: 'Band tension that holds a pad',
  search: ['strap', 'banding', 'leak clamp', 'hose clamp'],
  compute: bandTension,
  equation: { expression: 'f * F / (2 * n * sin(phi))' },
  inputs: {
    force: { symbol: 'F', kind: 'force', name: 'force of the leak on the wetted pad', sample: [10, 100e3] },
    halfAngle: { symbol: 'phi', kind: 'angle', name: 'half-angle of the pad on the pipe', sample: [0.05, 1.5] },
    factor: { symbol: 'f', kind: 'number', name: 'factor on the force of the leak', sample: [1, 4] },
    bands: { symbol: 'n', kind: 'number', name: 'bands over the pad', sample: [0.5, 4], default: 1 },
  },
  output: { symbol: 'T', kind: 'force', name: 'tension in each band at the pad' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'contact pressure of the band summed over the pad' } },
  limits: [],
});
