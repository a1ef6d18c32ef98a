import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Modulus, Strain, Stress } from '../../quantity/index.js';

export interface StrainAtStressInput {
  readonly stress: Stress;
  readonly modulus: Modulus;
}

/**
 * Elastic strain of the pipe at a stress in one direction.
 *
 * $$\varepsilon = \frac{s}{E_s}$$
 *
 * @param input.stress   s [Pa], >= 0
 * @param input.modulus  E_s, of the pipe [Pa], > 0
 * @returns strain
 * @throws CalculationError `invalid-input`
 * @remarks Uniaxial: the stress across it, which lessens the strain when both are tensile, is left out.
 */
export function strainAtStress(input: StrainAtStressInput): Strain {
  const { stress: s, modulus: E } = input;
  nonNegative(s, 'stress', 'Pa');
  positive(E, 'modulus', 'Pa');
  const strain = s / E;
  finite(strain, 'strain', '');
  return strain as Strain;
}

export const strainAtStressFormula = /* @__PURE__ */ formula<StrainAtStressInput, Strain>({
  id: 'pipe/strain-at-stress',
  title: 'Elastic strain of the pipe at a stress',
  compute: strainAtStress,
  equation: { expression: 's / E_s' },
  inputs: {
    stress: { symbol: 's', kind: 'stress', name: 'stress of the pipe', sample: [0, 4e8] },
    modulus: { symbol: 'E_s', kind: 'modulus', name: 'modulus of the pipe', sample: [1e11, 2.2e11] },
  },
  output: { symbol: 'eps', kind: 'strain', name: 'strain of the pipe' },
  sources: [],
  evidence: { form: { tag: 'practice', derived: "Hooke's law" } },
  limits: [],
});
