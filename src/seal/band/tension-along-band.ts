import { formula, nonNegative, positive } from '../../formula/index.js';
import type { Angle, Force } from '../../quantity/index.js';

export interface TensionAlongBandInput {
  readonly fastenerTension: Force;
  readonly friction: number;
  readonly angle?: Angle | undefined;
}

/**
 * Tension that friction leaves in a band at an angle from its fastener, opposite it unless said otherwise (Euler,
 * Eytelwein).
 *
 * $$T = T_f\, e^{-\mu\beta}$$
 *
 * @param input.fastenerTension T_f, tension at the fastener [N], > 0
 * @param input.friction mu, coefficient of friction between band and what it lies on, >= 0
 * @param input.angle beta, angle round the pipe from the fastener [rad], >= 0; pi, the far side, when not given
 * @returns tension at this angle [N]
 * @throws CalculationError `invalid-input`
 * @remarks At a friction of 0.2 about half is left opposite the fastener: put the fastener beside the leak, and tap
 *   the band round while tightening. No credit is taken for tapping.
 * @see statics problem of a hawser on a bollard, solved on a public web page
 */
export function tensionAlongBand(input: TensionAlongBandInput): Force {
  const { fastenerTension: Tf, friction: mu, angle: beta = Math.PI } = input;
  positive(Tf, 'fastenerTension', 'N');
  nonNegative(mu, 'friction', '');
  nonNegative(beta, 'angle', 'rad');
  const tension = Tf * Math.exp(-mu * beta);
  positive(tension, 'tension', 'N');
  return tension as Force;
}

export const tensionAlongBandFormula = /* @__PURE__ */ formula<TensionAlongBandInput, Force>({
  id: 'seal/tension-along-band',
  title: 'Tension left in a band away from its fastener',
  search: ['belt friction', 'capstan'],
  compute: tensionAlongBand,
  equation: { expression: 'T_f * exp(-mu * beta)' },
  inputs: {
    fastenerTension: { symbol: 'T_f', kind: 'force', name: 'tension at the fastener', sample: [10, 50e3] },
    friction: {
      symbol: 'mu',
      kind: 'number',
      name: 'coefficient of friction between band and what it lies on',
      sample: [0, 0.5],
    },
    angle: {
      symbol: 'beta',
      kind: 'angle',
      name: 'angle round the pipe from the fastener',
      sample: [0, 3.2],
      default: Math.PI,
    },
  },
  output: { symbol: 'T', kind: 'force', name: 'tension at this angle' },
  sources: [{ key: 'web-seal-examples', locator: 'hawser on a bollard' }],
  evidence: { form: { tag: 'secondary', derived: 'friction summed over small steps of the arc' } },
  limits: [],
});
