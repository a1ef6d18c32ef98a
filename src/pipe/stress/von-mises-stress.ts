import { finite, formula } from '../../formula/index.js';
import type { Stress } from '../../quantity/index.js';

export interface VonMisesStressInput {
  readonly first: Stress;
  readonly second: Stress;
  readonly third: Stress;
}

/**
 * Von Mises stress of three principal stresses.
 *
 *$$\sigma_{vM} = \sqrt{\tfrac{1}{2} \left( (s_1 - s_2)^2 + (s_2 - s_3)^2 + (s_3 - s_1)^2 \right)}$$
 *
 * @param input.first   s_1 [Pa], in any order, tension positive
 * @param input.second  s_2 [Pa]
 * @param input.third   s_3 [Pa]
 * @returns von Mises stress [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks Compare it with the yield strength of a ductile metal.
 * @see open lecture notes on yield criteria
 */
export function vonMisesStress(input: VonMisesStressInput): Stress {
  const { first, second, third } = input;
  finite(first, 'first', 'Pa');
  finite(second, 'second', 'Pa');
  finite(third, 'third', 'Pa');
  const [a, b, c] = [first - second, second - third, third - first];
  const stress = Math.sqrt((a * a + b * b + c * c) / 2);
  finite(stress, 'von Mises stress', 'Pa');
  return stress as Stress;
}

export const vonMisesStressFormula = /* @__PURE__ */ formula<VonMisesStressInput, Stress>({
  id: 'pipe/von-mises-stress',
  title: 'Von Mises stress',
  search: ['equivalent stress', 'effective stress'],
  compute: vonMisesStress,
  equation: { expression: 'sqrt(((s_1 - s_2)^2 + (s_2 - s_3)^2 + (s_3 - s_1)^2) / 2)' },
  inputs: {
    first: { symbol: 's_1', kind: 'stress', name: 'first principal stress', sample: [-300e6, 400e6] },
    second: { symbol: 's_2', kind: 'stress', name: 'second principal stress', sample: [-300e6, 400e6] },
    third: { symbol: 's_3', kind: 'stress', name: 'third principal stress', sample: [-300e6, 400e6] },
  },
  output: { symbol: 'sigma_vM', kind: 'stress', name: 'von Mises stress' },
  sources: [{ key: 'mechanics-notes', locator: 'yield criteria' }],
  evidence: { form: { tag: 'secondary', derived: 'second invariant of the stress deviator' } },
  limits: [],
});
