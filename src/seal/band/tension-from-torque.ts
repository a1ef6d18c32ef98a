import { finite, formula, nonNegative, positive, properFraction } from '../../formula/index.js';
import type { Force, Length, Moment, Ratio } from '../../quantity/index.js';

/** Nominal tension and the ends of its scatter: the pad gets the low one, strap and pipe must bear the high one. */
export interface ScatteredTension {
  readonly tension: Force;
  readonly low: Force;
  readonly high: Force;
}

export interface TensionFromTorqueInput {
  readonly torque: Moment;
  readonly nutFactor: number;
  readonly threadDiameter: Length;
  readonly scatter: Ratio;
}

/**
 * Tension that a torque sets in a fastener, and the band in which it scatters.
 *
 * $$T = \frac{M}{K d}, \qquad T_{l,h} = T (1 \mp s)$$
 *
 * @param input.torque M, tightening torque [N m], >= 0
 * @param input.nutFactor K, nut factor of the fastener, > 0; no default
 * @param input.threadDiameter d, nominal diameter of the thread [m], > 0
 * @param input.scatter s, scatter of the tension at one torque, each way [1], 0 up to, not including, 1; no default
 * @returns nominal tension and both ends of its scatter [N]
 * @throws CalculationError `invalid-input`
 * @remarks A quarter each way is usual for a torque wrench on plain threads. About 0.20 for dry plain steel, 0.15
 *   oiled, 0.12 to 0.16 with anti-seize paste, 0.30 rusty. A worm drive loses more in worm and housing: 0.3 to 0.5
 *   on its screw is unconfirmed, so take the maker's measured tension.
 * @see web notes after Shigley and a machinery handbook
 */
export function tensionFromTorque(input: TensionFromTorqueInput): ScatteredTension {
  const { torque: M, nutFactor: K, threadDiameter: d, scatter: s } = input;
  nonNegative(M, 'torque', 'N m');
  positive(K, 'nutFactor', '');
  positive(d, 'threadDiameter', 'm');
  properFraction(s, 'scatter');
  const tension = M / (K * d);
  const high = tension * (1 + s);
  finite(high, 'tension', 'N');
  return { tension: tension as Force, low: (tension * (1 - s)) as Force, high: high as Force };
}

export const tensionFromTorqueFormula = /* @__PURE__ */ formula<TensionFromTorqueInput, ScatteredTension>({
  id: 'seal/tension-from-torque',
  title: 'Fastener tension from torque, with its scatter',
  search: ['bolt torque', 'wrench', 'k factor'],
  compute: tensionFromTorque,
  equation: { expression: 'M / (K * d)' },
  inputs: {
    torque: { symbol: 'M', kind: 'moment', name: 'tightening torque', sample: [0.1, 200] },
    nutFactor: { symbol: 'K', kind: 'number', name: 'nut factor of the fastener', sample: [0.1, 0.5] },
    threadDiameter: { symbol: 'd', kind: 'length', name: 'nominal diameter of the thread', sample: [0.004, 0.02] },
    scatter: { symbol: 's', kind: 'ratio', name: 'scatter of the tension at one torque, each way', sample: [0, 0.6] },
  },
  output: {
    tension: { symbol: 'T', kind: 'force', name: 'nominal tension' },
    low: { symbol: 'T_l', kind: 'force', name: 'low end of the scatter' },
    high: { symbol: 'T_h', kind: 'force', name: 'high end of the scatter' },
  },
  sources: [{ key: 'web-seal-examples', locator: 'torque and preload of an M12 bolt, class 8.8' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [],
});
