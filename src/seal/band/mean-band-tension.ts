import { formula, nonNegative, positive } from '../../formula/index.js';
import type { Force } from '../../quantity/index.js';

export interface MeanBandTensionInput {
  readonly fastenerTension: Force;
  readonly friction: number;
}

/**
 * Mean over the circumference of the tension in a band that was tightened at one fastener.
 *
 * $$T_m = T_f\,\frac{1 - e^{-\mu\pi}}{\mu\pi}$$
 *
 * @param input.fastenerTension T_f, tension at the fastener [N], > 0
 * @param input.friction mu, coefficient of friction between band and what it lies on, >= 0
 * @returns mean tension [N]
 * @throws CalculationError `invalid-input`
 * @remarks The two halves of the band are alike: the tension falls from the fastener to the far side.
 * @see statics problem of a hawser on a bollard, solved on a public web page
 */
export function meanBandTension(input: MeanBandTensionInput): Force {
  const { fastenerTension: Tf, friction: mu } = input;
  positive(Tf, 'fastenerTension', 'N');
  nonNegative(mu, 'friction', '');
  const x = mu * Math.PI;
  // expm1 keeps the digits that 1 - exp(-x) would lose at a small friction.
  const tension = x === 0 ? Tf : (Tf * -Math.expm1(-x)) / x;
  positive(tension, 'mean tension', 'N');
  return tension as Force;
}

export const meanBandTensionFormula = /* @__PURE__ */ formula<MeanBandTensionInput, Force>({
  id: 'seal/mean-band-tension',
  title: 'Mean tension round a band',
  search: ['belt friction', 'capstan'],
  compute: meanBandTension,
  equation: {
    branches: [{ when: 'mu == 0', expression: 'T_f' }, { expression: 'T_f * (1 - exp(-mu * pi)) / (mu * pi)' }],
  },
  inputs: {
    fastenerTension: { symbol: 'T_f', kind: 'force', name: 'tension at the fastener', sample: [10, 50e3] },
    friction: {
      symbol: 'mu',
      kind: 'number',
      name: 'coefficient of friction between band and what it lies on',
      sample: [0, 0.5],
    },
  },
  output: { symbol: 'T_m', kind: 'force', name: 'mean tension' },
  sources: [{ key: 'web-seal-examples', locator: 'hawser on a bollard' }],
  evidence: { form: { tag: 'secondary', derived: 'quadrature of the tension over half the circumference' } },
  limits: [],
});
