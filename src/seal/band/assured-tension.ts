import { formula, positive, properFraction } from '../../formula/index.js';
import type { Force, Ratio } from '../../quantity/index.js';

export interface AssuredTensionInput {
  readonly tensionLimit: Force;
  readonly scatter: Ratio;
}

/**
 * Low end of the tension when its high end just reaches what strap, fastener or pipe may bear.
 *
 * $$T_l = T_{max}\,\frac{1 - s}{1 + s}$$
 *
 * @param input.tensionLimit T_max, highest tension that may be reached [N], > 0
 * @param input.scatter s, scatter of the tension at one torque, each way [1], 0 up to, not including, 1; no default
 * @returns tension surely reached [N]
 * @throws CalculationError `invalid-input`
 * @remarks Set the nominal tension to T_max/(1 + s). At a scatter of a quarter only three fifths of the strength of
 *   the band surely reach the pad.
 */
export function assuredTension(input: AssuredTensionInput): Force {
  const { tensionLimit: T, scatter: s } = input;
  positive(T, 'tensionLimit', 'N');
  properFraction(s, 'scatter');
  const tension = (T * (1 - s)) / (1 + s);
  positive(tension, 'assured tension', 'N');
  return tension as Force;
}

export const assuredTensionFormula = /* @__PURE__ */ formula<AssuredTensionInput, Force>({
  id: 'seal/assured-tension',
  title: 'Tension that is surely reached below a limit',
  compute: assuredTension,
  equation: { expression: 'T_max * (1 - s) / (1 + s)' },
  inputs: {
    tensionLimit: { symbol: 'T_max', kind: 'force', name: 'highest tension that may be reached', sample: [10, 50e3] },
    scatter: { symbol: 's', kind: 'ratio', name: 'scatter of the tension at one torque, each way', sample: [0, 0.6] },
  },
  output: { symbol: 'T_l', kind: 'force', name: 'tension surely reached' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'both ends of the scatter of the nominal tension' } },
  limits: [],
});
