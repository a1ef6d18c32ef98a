import { atMost, finite, formula, positive } from '../../formula/index.js';
import type { Angle, Force } from '../../quantity/index.js';

export interface FrictionFromTensionsInput {
  readonly looseTension: Force;
  readonly tightTension: Force;
  readonly angle: Angle;
}

/**
 * Coefficient of friction from the tensions at both ends of an arc of contact (Euler, Eytelwein, solved for it).
 *
 * $$\mu = \frac{1}{\beta}\ln\frac{T_1}{T_2}$$
 *
 * @param input.looseTension T_2, tension on the loose side [N], > 0
 * @param input.tightTension T_1, tension on the tight side [N], >= T_2
 * @param input.angle beta, angle of contact [rad], > 0
 * @returns coefficient of friction
 * @throws CalculationError `invalid-input`
 * @remarks How to find the friction of a band on its sheet: a spring balance at each end of a quarter turn.
 * @see statics problem of a hawser on a bollard, solved on a public web page
 */
export function frictionFromTensions(input: FrictionFromTensionsInput): number {
  const { looseTension: T2, tightTension: T1, angle: beta } = input;
  positive(T2, 'looseTension', 'N');
  positive(T1, 'tightTension', 'N');
  atMost(T2, T1, 'the tension on the tight side', 'looseTension', 'N');
  positive(beta, 'angle', 'rad');
  const mu = Math.log(T1 / T2) / beta;
  finite(mu, 'friction', '');
  return mu;
}

export const frictionFromTensionsFormula = /* @__PURE__ */ formula<FrictionFromTensionsInput, number>({
  id: 'seal/friction-from-tensions',
  title: 'Friction from two tensions',
  compute: frictionFromTensions,
  equation: { expression: 'log(T_1 / T_2) / beta' },
  inputs: {
    looseTension: { symbol: 'T_2', kind: 'force', name: 'tension on the loose side', sample: [10, 10e3] },
    tightTension: { symbol: 'T_1', kind: 'force', name: 'tension on the tight side', sample: [2000, 100e3] },
    angle: { symbol: 'beta', kind: 'angle', name: 'angle of contact', sample: [0.5, 13] },
  },
  output: { symbol: 'mu', kind: 'number', name: 'coefficient of friction' },
  sources: [{ key: 'web-seal-examples', locator: 'hawser on a bollard' }],
  evidence: { form: { tag: 'secondary', derived: 'inverse of the tension along a band' } },
  limits: [],
});
