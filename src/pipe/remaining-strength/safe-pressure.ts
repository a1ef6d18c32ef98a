import { atMost, formula, nonNegative, positive, refuse } from '../../formula/index.js';
import type { GaugePressure } from '../../quantity/index.js';

export interface SafePressureInput {
  readonly failurePressure: GaugePressure;
  readonly safetyFactor: number;
  readonly maximumPressure: GaugePressure;
  readonly modellingFactor?: number;
}

/**
 * Safe pressure of a pipe with metal loss: its failure pressure over a safety factor, and never more than the sound pipe may carry.
 *
 * $$P_s = \min\left(F_m \frac{P_f}{\mathrm{SF}},\ P_{max}\right)$$
 *
 * @param input.failurePressure  P_f, of any of the remaining-strength methods [Pa], >= 0
 * @param input.safetyFactor     SF, >= 1
 * @param input.maximumPressure  P_max, MAOP or MAWP of the sound pipe [Pa], >= 0
 * @param input.modellingFactor  F_m, of the method itself, above 0 and at most 1; 1 by default, 0.9 for DNV-RP-F101
 * @returns safe pressure [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks Usual factors: 1/F of the line (1.39 for 0.72), and not below 1.25.
 * @see ASME B31G
 */
export function safePressure(input: SafePressureInput): GaugePressure {
  const { failurePressure: P, safetyFactor: SF, maximumPressure: Pmax, modellingFactor: Fm = 1 } = input;
  nonNegative(P, 'failurePressure', 'Pa');
  nonNegative(Pmax, 'maximumPressure', 'Pa');
  checkSafetyFactor(SF);
  positive(Fm, 'modellingFactor', '');
  atMost(Fm, 1, 'no factor', 'modellingFactor', '');
  return Math.min((Fm * P) / SF, Pmax) as GaugePressure;
}

/**
 * Refuses safety factors below 1.
 *
 * @internal
 */
export function checkSafetyFactor(value: number): void {
  if (Number.isFinite(value) && value >= 1) return;
  const constraint = 'must be a finite number, 1 or above';
  refuse({ code: 'invalid-input', parameter: 'safetyFactor', value, unit: '', constraint });
}

export const safePressureFormula = /* @__PURE__ */ formula<SafePressureInput, GaugePressure>({
  id: 'pipe/safe-pressure',
  title: 'Safe pressure of the pipe with metal loss',
  search: ['derate', 'mop', 'maop'],
  compute: safePressure,
  equation: { expression: 'min(F_m * P_f / SF, P_max)' },
  inputs: {
    failurePressure: { symbol: 'P_f', kind: 'gauge pressure', name: 'failure pressure', sample: [0, 40e6] },
    safetyFactor: { symbol: 'SF', kind: 'number', name: 'safety factor', sample: [1, 3] },
    maximumPressure: {
      symbol: 'P_max',
      kind: 'gauge pressure',
      name: 'maximum pressure of the sound pipe',
      sample: [1e6, 15e6],
    },
    modellingFactor: {
      symbol: 'F_m',
      kind: 'number',
      name: 'modelling factor of the method',
      default: 1,
      sample: [0.8, 1],
    },
  },
  output: { symbol: 'P_s', kind: 'gauge pressure', name: 'safe pressure' },
  sources: [
    { key: 'asme-b31g', locator: 'safe operating pressure' },
    { key: 'dnv-rp-f101', locator: 'Part B, modelling factor, as recalled' },
  ],
  evidence: { form: { tag: 'secondary' }, modellingFactor: { tag: 'recalled' } },
  limits: [],
});
