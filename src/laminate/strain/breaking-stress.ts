import { formula, positive } from '../../formula/index.js';
import type { Modulus, Strain, Stress } from '../../quantity/index.js';

export interface BreakingStressInput {
  readonly modulus: Modulus;
  readonly failureStrain: Strain;
}

/**
 * Stress at which a laminate breaks that is elastic up to its strain to failure.
 *
 * $$\sigma_u = E\,\varepsilon_u$$
 *
 * @param input.modulus       E, in the direction of the load [Pa], > 0
 * @param input.failureStrain eps_u, short-term strain to failure in that direction, > 0
 * @returns stress at failure [Pa]
 * @throws CalculationError `invalid-input`
 */
export function breakingStress(input: BreakingStressInput): Stress {
  const { modulus: E, failureStrain: eps } = input;
  positive(E, 'modulus', 'Pa');
  positive(eps, 'failureStrain', '');
  const sigma = E * eps;
  positive(sigma, 'breaking stress', 'Pa');
  return sigma as Stress;
}

export const breakingStressFormula = /* @__PURE__ */ formula<BreakingStressInput, Stress>({
  id: 'laminate/breaking-stress',
  title: 'Stress at which a laminate breaks',
  search: ['tensile strength of a laminate'],
  compute: breakingStress,
  equation: { expression: 'E * eps_u' },
  inputs: {
    modulus: { symbol: 'E', kind: 'modulus', name: 'modulus in the direction of the load', sample: [5e9, 150e9] },
    failureStrain: { symbol: 'eps_u', kind: 'strain', name: 'short-term strain to failure', sample: [0.005, 0.03] },
  },
  output: { symbol: 'sigma_u', kind: 'stress', name: 'stress at failure' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'work of a pull that is summed up' } },
  limits: [],
});
