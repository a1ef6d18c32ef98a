import { finite, formula, positive, properFraction } from '../formula/index.js';
import type { Modulus } from '../quantity/index.js';

export interface MinorPoissonRatioInput {
  readonly hoopModulus: Modulus;
  readonly axialModulus: Modulus;
  readonly poissonRatio: number;
}

/**
 * Poisson's ratio of a laminate that is loaded along the pipe and contracts round it.
 *
 * $$\nu_{ac} = \nu_{ca} \frac{E_a}{E_c}$$
 *
 * @param input.hoopModulus   E_c [Pa], > 0
 * @param input.axialModulus  E_a [Pa], > 0
 * @param input.poissonRatio  nu_ca, loaded round, contracting along, from 0 up to, not including, 1
 * @returns ratio
 * @throws CalculationError `invalid-input`
 * @see Symmetry of the compliance of an orthotropic lamina
 */
export function minorPoissonRatio(input: MinorPoissonRatioInput): number {
  const { hoopModulus: Ec, axialModulus: Ea, poissonRatio: nu } = input;
  positive(Ec, 'hoopModulus', 'Pa');
  positive(Ea, 'axialModulus', 'Pa');
  properFraction(nu, 'poissonRatio');
  const ratio = nu * (Ea / Ec);
  finite(ratio, 'ratio', '');
  return ratio;
}

export const minorPoissonRatioFormula = /* @__PURE__ */ formula<MinorPoissonRatioInput, number>({
  id: 'laminate/minor-poisson-ratio',
  title: "Poisson's ratio, axial to hoop",
  search: ['lateral contraction', 'nu 21'],
  compute: minorPoissonRatio,
  equation: { expression: 'nu_ca * (E_a / E_c)' },
  inputs: {
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [8e9, 80e9] },
    axialModulus: { symbol: 'E_a', kind: 'modulus', name: 'axial modulus of the laminate', sample: [4e9, 40e9] },
    poissonRatio: { symbol: 'nu_ca', kind: 'number', name: "Poisson's ratio, hoop to axial", sample: [0, 0.4] },
  },
  output: { symbol: 'nu_ac', kind: 'number', name: "Poisson's ratio, axial to hoop" },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'work done by two loads in either order' } },
  limits: [],
});
