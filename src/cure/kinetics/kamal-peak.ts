import { formula, positive } from '../../formula/index.js';
import type { RateConstant, Ratio } from '../../quantity/index.js';

export interface KamalPeakInput {
  readonly firstRate: RateConstant;
  readonly secondRate: RateConstant;
}

/**
 * Degree of cure at which a Kamal-Sourour cure with both orders 1 runs fastest.
 *
 * $$a_p = \frac{k_2 - k_1}{2 k_2}, \quad 0 \text{ when } k_2 \le k_1$$
 *
 * @param input.firstRate  k_1 at the temperature [1/s], > 0
 * @param input.secondRate k_2 at the temperature [1/s], > 0
 * @returns degree of cure at the highest rate; 0 when the rate falls from the start
 * @throws CalculationError `invalid-input`
 * @see Kamal and Sourour 1973, as recalled
 */
export function kamalPeak(input: KamalPeakInput): Ratio {
  const { firstRate: k1, secondRate: k2 } = input;
  positive(k1, 'firstRate', '1/s');
  positive(k2, 'secondRate', '1/s');
  return (k2 <= k1 ? 0 : (k2 - k1) / k2 / 2) as Ratio;
}

export const kamalPeakFormula = /* @__PURE__ */ formula<KamalPeakInput, Ratio>({
  id: 'cure/kamal-peak',
  title: 'Degree of cure at the highest rate, Kamal-Sourour with both orders 1',
  compute: kamalPeak,
  equation: { branches: [{ when: 'k_2 <= k_1', expression: '0' }, { expression: '(k_2 - k_1) / (2 * k_2)' }] },
  inputs: {
    firstRate: { symbol: 'k_1', kind: 'rate constant', name: 'rate without autocatalysis', sample: [1e-5, 1e-3] },
    secondRate: { symbol: 'k_2', kind: 'rate constant', name: 'rate of the autocatalysis', sample: [1e-4, 1e-2] },
  },
  output: { symbol: 'a_p', kind: 'ratio', name: 'degree of cure at the highest rate' },
  sources: [{ key: 'kamal-sourour-1973', locator: 'rate law' }],
  evidence: { form: { tag: 'recalled', derived: 'derivative of the rate' } },
  limits: [],
});
