import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Angle, Force } from '../../quantity/index.js';

export interface FastenerTensionInput {
  readonly padTension: Force;
  readonly friction: number;
  readonly angle?: Angle | undefined;
}

/**
 * Tension at the fastener that leaves a wanted tension at the pad (Euler, Eytelwein).
 *
 * $$T_f = T_p\, e^{\mu\beta}$$
 *
 * @param input.padTension T_p, tension wanted at the pad [N], > 0
 * @param input.friction mu, coefficient of friction between band and what it lies on, >= 0
 * @param input.angle beta, angle round the pipe from the fastener to the pad [rad], >= 0; pi, the far side, when
 *   not given
 * @returns tension at the fastener [N]
 * @throws CalculationError `invalid-input`
 * @remarks Take the high end of the friction.
 * @see statics problem of a hawser on a bollard, solved on a public web page
 */
export function fastenerTension(input: FastenerTensionInput): Force {
  const { padTension: Tp, friction: mu, angle: beta = Math.PI } = input;
  positive(Tp, 'padTension', 'N');
  nonNegative(mu, 'friction', '');
  nonNegative(beta, 'angle', 'rad');
  const tension = Tp * Math.exp(mu * beta);
  finite(tension, 'tension', 'N');
  return tension as Force;
}

export const fastenerTensionFormula = /* @__PURE__ */ formula<FastenerTensionInput, Force>({
  id: 'seal/fastener-tension',
  title: 'Tension to set at the fastener',
  search: ['bolt', 'clamp'],
  compute: fastenerTension,
  equation: { expression: 'T_p * exp(mu * beta)' },
  inputs: {
    padTension: { symbol: 'T_p', kind: 'force', name: 'tension wanted at the pad', sample: [10, 50e3] },
    friction: {
      symbol: 'mu',
      kind: 'number',
      name: 'coefficient of friction between band and what it lies on',
      sample: [0, 0.5],
    },
    angle: {
      symbol: 'beta',
      kind: 'angle',
      name: 'angle round the pipe from the fastener to the pad',
      sample: [0, 3.2],
      default: Math.PI,
    },
  },
  output: { symbol: 'T_f', kind: 'force', name: 'tension at the fastener' },
  sources: [{ key: 'web-seal-examples', locator: 'hawser on a bollard' }],
  evidence: { form: { tag: 'secondary', derived: 'friction summed over small steps of the arc' } },
  limits: [],
});
