import { finite, formula, positive, within } from '../../formula/index.js';
import type { Modulus } from '../../quantity/index.js';

export interface IsotropicShearModulusInput {
  readonly modulus: Modulus;
  readonly poissonRatio: number;
}

/**
 * Shear modulus of a constituent that is alike in all directions.
 *
 * $$G = \frac{E}{2 (1 + \nu)}$$
 *
 * @param input.modulus       E [Pa], > 0
 * @param input.poissonRatio  nu, from 0 to 0.5
 * @returns shear modulus [Pa]
 * @throws CalculationError `invalid-input`
 * @see Chamis, NASA TM-83320, 1983
 */
export function isotropicShearModulus(input: IsotropicShearModulusInput): Modulus {
  const { modulus: E, poissonRatio: nu } = input;
  positive(E, 'modulus', 'Pa');
  within(nu, 0, 0.5, 'poissonRatio', '');
  const result = E / (2 * (1 + nu));
  finite(result, 'shear modulus', 'Pa');
  return result as Modulus;
}

export const isotropicShearModulusFormula = /* @__PURE__ */ formula<IsotropicShearModulusInput, Modulus>({
  id: 'laminate/isotropic-shear-modulus',
  title: 'Shear modulus of an isotropic constituent',
  compute: isotropicShearModulus,
  equation: { expression: 'E / (2 * (1 + nu))' },
  inputs: {
    modulus: { symbol: 'E', kind: 'modulus', name: 'modulus', sample: [2e9, 240e9] },
    poissonRatio: { symbol: 'nu', kind: 'number', name: "Poisson's ratio", sample: [0.1, 0.45] },
  },
  output: { symbol: 'G', kind: 'modulus', name: 'shear modulus' },
  sources: [{ key: 'nasa-tm-83320', locator: 'constituents' }],
  evidence: { form: { tag: 'secondary', derived: 'pull and push at 45 degrees' } },
  limits: [],
});
