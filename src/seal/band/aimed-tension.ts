import { finite, formula, nonNegative, properFraction } from '../../formula/index.js';
import type { Force, Ratio } from '../../quantity/index.js';

export interface AimedTensionInput {
  readonly neededTension: Force;
  readonly scatter: Ratio;
}

/**
 * Nominal tension to tighten to, so that the low end of its scatter is still the tension that is needed.
 *
 * $$T = \frac{T_l}{1 - s}$$
 *
 * @param input.neededTension T_l, tension that must surely be reached [N], >= 0
 * @param input.scatter s, scatter of the tension at one torque, each way [1], 0 up to, not including, 1; no default
 * @returns nominal tension [N]
 * @throws CalculationError `invalid-input`
 * @remarks Strap, fastener and pipe must bear its high end, T (1 + s).
 */
export function aimedTension(input: AimedTensionInput): Force {
  const { neededTension: Tl, scatter: s } = input;
  nonNegative(Tl, 'neededTension', 'N');
  properFraction(s, 'scatter');
  const T = Tl / (1 - s);
  finite(T, 'aimed tension', 'N');
  return T as Force;
}

export const aimedTensionFormula = /* @__PURE__ */ formula<AimedTensionInput, Force>({
  id: 'seal/aimed-tension',
  title: 'Tension to tighten to',
  search: ['torque', 'clamp'],
  compute: aimedTension,
  equation: { expression: 'T_l / (1 - s)' },
  inputs: {
    neededTension: {
      symbol: 'T_l',
      kind: 'force',
      name: 'tension that must surely be reached',
      sample: [0, 50e3],
    },
    scatter: { symbol: 's', kind: 'ratio', name: 'scatter of the tension at one torque, each way', sample: [0, 0.6] },
  },
  output: { symbol: 'T', kind: 'force', name: 'nominal tension' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'low end of the scatter of the nominal tension' } },
  limits: [],
});
