import { atMost, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { GaugePressure } from '../../quantity/index.js';

export interface PressureRatioInput {
  readonly lowestPressure: GaugePressure;
  readonly highestPressure: GaugePressure;
}

/**
 * Lowest over highest pressure of a load cycle.
 *
 * $$R_c = \frac{P_{min}}{P_{max}}$$
 *
 * @param input.lowestPressure   P_min [Pa], >= 0 and at most P_max
 * @param input.highestPressure  P_max [Pa], > 0
 * @returns ratio, 0 to 1; 1 where the pressure stands still
 * @throws CalculationError `invalid-input`
 * @see ISO 24817:2017 and ASME PCC-2 Part 4, cyclic loading, as recalled
 */
export function pressureRatio(input: PressureRatioInput): number {
  const { lowestPressure: low, highestPressure: high } = input;
  positive(high, 'highestPressure', 'Pa');
  nonNegative(low, 'lowestPressure', 'Pa');
  atMost(low, high, 'the highest pressure', 'lowestPressure', 'Pa');
  const ratio = low / high;
  finite(ratio, 'pressure ratio', '');
  return ratio;
}

export const pressureRatioFormula = /* @__PURE__ */ formula<PressureRatioInput, number>({
  id: 'laminate/pressure-ratio',
  title: 'Lowest over highest pressure of a cycle',
  compute: pressureRatio,
  equation: { expression: 'P_min / P_max' },
  inputs: {
    lowestPressure: { symbol: 'P_min', kind: 'gauge pressure', name: 'lowest pressure of a cycle', sample: [0, 8e6] },
    highestPressure: {
      symbol: 'P_max',
      kind: 'gauge pressure',
      name: 'highest pressure of a cycle',
      sample: [1e6, 20e6],
    },
  },
  output: { symbol: 'R_c', kind: 'number', name: 'lowest over highest pressure' },
  sources: [{ key: 'iso-24817', locator: 'cyclic loading, as recalled' }],
  evidence: { form: { tag: 'recalled' } },
  limits: [],
});
