import { formula, within } from '../../formula/index.js';
import type { Ratio } from '../../quantity/index.js';

export interface CriticalPressureRatioInput {
  readonly heatCapacityRatio: number;
}

/**
 * Ratio of the absolute pressures outside and inside at and below which gas leaves a hole at the speed of sound.
 *
 * $$r_c = \left(\frac{2}{k+1}\right)^{k/(k-1)}$$
 *
 * @param input.heatCapacityRatio k, ratio of the heat capacities, 1.01 to 1.67
 * @returns critical pressure ratio [1]
 * @throws CalculationError `invalid-input`
 * @remarks Air 0.528, natural gas about 0.546: anything above about one bar in the line chokes.
 * @see choked flow, on public web pages
 */
export function criticalPressureRatio(input: CriticalPressureRatioInput): Ratio {
  const { heatCapacityRatio: k } = input;
  within(k, 1.01, 1.67, 'heatCapacityRatio', '');
  // The power of 2/(k + 1), by log1p: near k = 1 the base comes close to 1 and its power would lose digits.
  return Math.exp((-k / (k - 1)) * Math.log1p((k - 1) / 2)) as Ratio;
}

export const criticalPressureRatioFormula = /* @__PURE__ */ formula<CriticalPressureRatioInput, Ratio>({
  id: 'seal/critical-pressure-ratio',
  title: 'Critical pressure ratio of a gas',
  search: ['choked flow', 'sonic'],
  compute: criticalPressureRatio,
  equation: { expression: '(2 / (k + 1))^(k / (k - 1))' },
  inputs: {
    heatCapacityRatio: { symbol: 'k', kind: 'number', name: 'ratio of the heat capacities', sample: [1.05, 1.667] },
  },
  output: { symbol: 'r_c', kind: 'ratio', name: 'critical pressure ratio' },
  sources: [{ key: 'web-seal-examples', locator: 'choked flow' }],
  evidence: { form: { tag: 'secondary', derived: 'pressure in the hole of the greatest isentropic flow' } },
  limits: [],
});
