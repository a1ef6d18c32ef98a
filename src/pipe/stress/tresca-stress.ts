import { finite, formula } from '../../formula/index.js';
import type { Stress } from '../../quantity/index.js';

export interface TrescaStressInput {
  readonly first: Stress;
  readonly second: Stress;
  readonly third: Stress;
}

/**
 * Tresca stress of three principal stresses: twice the greatest shear.
 *
 *$$\sigma_T = \max(s_1, s_2, s_3) - \min(s_1, s_2, s_3)$$
 *
 * @param input.first   s_1 [Pa], in any order, tension positive
 * @param input.second  s_2 [Pa]
 * @param input.third   s_3 [Pa]
 * @returns Tresca stress [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks Never below the von Mises stress, and at most 2/sqrt(3) of it.
 * @see open lecture notes on yield criteria
 */
export function trescaStress(input: TrescaStressInput): Stress {
  const { first, second, third } = input;
  finite(first, 'first', 'Pa');
  finite(second, 'second', 'Pa');
  finite(third, 'third', 'Pa');
  const stress = Math.max(first, second, third) - Math.min(first, second, third);
  finite(stress, 'Tresca stress', 'Pa');
  return stress as Stress;
}

export const trescaStressFormula = /* @__PURE__ */ formula<TrescaStressInput, Stress>({
  id: 'pipe/tresca-stress',
  title: 'Tresca stress',
  search: ['maximum shear stress', 'equivalent stress'],
  compute: trescaStress,
  equation: { expression: 'max(s_1, s_2, s_3) - min(s_1, s_2, s_3)' },
  inputs: {
    first: { symbol: 's_1', kind: 'stress', name: 'first principal stress', sample: [-300e6, 400e6] },
    second: { symbol: 's_2', kind: 'stress', name: 'second principal stress', sample: [-300e6, 400e6] },
    third: { symbol: 's_3', kind: 'stress', name: 'third principal stress', sample: [-300e6, 400e6] },
  },
  output: { symbol: 'sigma_T', kind: 'stress', name: 'Tresca stress' },
  sources: [{ key: 'mechanics-notes', locator: 'yield criteria' }],
  evidence: { form: { tag: 'secondary', derived: 'greatest of the three principal differences' } },
  limits: [],
});
