import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Force, Length, Moment } from '../../quantity/index.js';

export interface FastenerTorqueInput {
  readonly tension: Force;
  readonly nutFactor: number;
  readonly threadDiameter: Length;
}

/**
 * Torque that sets a wanted tension in a fastener.
 *
 * $$M = K d T$$
 *
 * @param input.tension T, tension in the fastener [N], >= 0
 * @param input.nutFactor K, nut factor of the fastener, > 0; no default
 * @param input.threadDiameter d, nominal diameter of the thread [m], > 0
 * @returns tightening torque [N m]
 * @throws CalculationError `invalid-input`
 * @remarks Nominal: the tension scatters at one and the same torque. About 0.20 for dry plain steel, 0.15 oiled,
 *   0.12 to 0.16 with anti-seize paste, 0.30 rusty. A worm drive loses more in worm and housing: 0.3 to 0.5 on its
 *   screw is unconfirmed, so take the maker's measured tension.
 * @see web notes after Shigley and a machinery handbook
 */
export function fastenerTorque(input: FastenerTorqueInput): Moment {
  const { tension: T, nutFactor: K, threadDiameter: d } = input;
  nonNegative(T, 'tension', 'N');
  positive(K, 'nutFactor', '');
  positive(d, 'threadDiameter', 'm');
  const torque = K * d * T;
  finite(torque, 'torque', 'N m');
  return torque as Moment;
}

export const fastenerTorqueFormula = /* @__PURE__ */ formula<FastenerTorqueInput, Moment>({
  id: 'seal/fastener-torque',
  title: 'Torque for a fastener tension',
  search: ['bolt torque', 'wrench', 'nut factor', 'k factor'],
  compute: fastenerTorque,
  equation: { expression: 'K * d * T' },
  inputs: {
    tension: { symbol: 'T', kind: 'force', name: 'tension in the fastener', sample: [10, 50e3] },
    nutFactor: { symbol: 'K', kind: 'number', name: 'nut factor of the fastener', sample: [0.1, 0.5] },
    threadDiameter: { symbol: 'd', kind: 'length', name: 'nominal diameter of the thread', sample: [0.004, 0.02] },
  },
  output: { symbol: 'M', kind: 'moment', name: 'tightening torque' },
  sources: [{ key: 'web-seal-examples', locator: 'torque and preload of an M12 bolt, class 8.8' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [],
});
