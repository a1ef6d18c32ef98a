import { atMost, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Angle, Force } from '../../quantity/index.js';

export interface ClampingForceInput {
  readonly tension: Force;
  readonly halfAngle: Angle;
  readonly bands?: number | undefined;
}

/**
 * Force with which tensioned bands press a pad on the pipe.
 *
 * $$N = 2 n T \sin\varphi$$
 *
 * @param input.tension T, tension in each band at the pad [N], >= 0
 * @param input.halfAngle phi, half-angle of the pad on the pipe [rad], > 0, at most pi/2
 * @param input.bands n, bands over the pad, `bandsOverPad`, > 0; 1 when not given
 * @returns force on the pad [N]
 * @throws CalculationError `invalid-input`
 * @remarks Both ends of the band pull on the pad; what is left is the part across it.
 */
export function clampingForce(input: ClampingForceInput): Force {
  const { tension: T, halfAngle: phi, bands: n = 1 } = input;
  nonNegative(T, 'tension', 'N');
  positive(phi, 'halfAngle', 'rad');
  atMost(phi, Math.PI / 2, 'a quarter turn', 'halfAngle', 'rad');
  positive(n, 'bands', '');
  const force = 2 * n * T * Math.sin(phi);
  finite(force, 'clamping force', 'N');
  return force as Force;
}

export const clampingForceFormula = /* @__PURE__ */ formula<ClampingForceInput, Force>({
  id: 'seal/clamping-force',
  title: 'Force of the bands on a pad',
  search: ['leak clamp', 'strap', 'banding'],
  compute: clampingForce,
  equation: { expression: '2 * n * T * sin(phi)' },
  inputs: {
    tension: { symbol: 'T', kind: 'force', name: 'tension in each band at the pad', sample: [10, 50e3] },
    halfAngle: { symbol: 'phi', kind: 'angle', name: 'half-angle of the pad on the pipe', sample: [0.05, 1.5] },
    bands: { symbol: 'n', kind: 'number', name: 'bands over the pad', sample: [0.5, 4], default: 1 },
  },
  output: { symbol: 'N', kind: 'force', name: 'force on the pad' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'contact pressure of the band summed over the pad' } },
  limits: [],
});
