import { finite, formula, positive } from '../formula/index.js';
import type { Modulus } from '../quantity/index.js';

export interface PoissonRatioLimitInput {
  readonly hoopModulus: Modulus;
  readonly axialModulus: Modulus;
}

/**
 * Poisson's ratio, load round the pipe and contraction along it, that no laminate with these moduli can reach: at it the
 * laminate could be strained without work, beyond it straining would give energy.
 *
 * $$\nu_{max} = \sqrt{\frac{E_c}{E_a}}$$
 *
 * @param input.hoopModulus   E_c [Pa], > 0
 * @param input.axialModulus  E_a [Pa], > 0
 * @returns limit of Poisson's ratio
 * @throws CalculationError `invalid-input`
 * @remarks From nu_ca nu_ac < 1 with nu_ac/E_a = nu_ca/E_c.
 */
export function poissonRatioLimit(input: PoissonRatioLimitInput): number {
  const { hoopModulus: Ec, axialModulus: Ea } = input;
  positive(Ec, 'hoopModulus', 'Pa');
  positive(Ea, 'axialModulus', 'Pa');
  const limit = Math.sqrt(Ec / Ea);
  finite(limit, "limit of Poisson's ratio", '');
  return limit;
}

export const poissonRatioLimitFormula = /* @__PURE__ */ formula<PoissonRatioLimitInput, number>({
  id: 'laminate/poisson-ratio-limit',
  title: "Limit of a laminate's Poisson's ratio",
  compute: poissonRatioLimit,
  equation: { expression: 'sqrt(E_c / E_a)' },
  inputs: {
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus', sample: [10e9, 150e9] },
    axialModulus: { symbol: 'E_a', kind: 'modulus', name: 'axial modulus', sample: [5e9, 80e9] },
  },
  output: { symbol: 'nu_max', kind: 'number', name: "limit of Poisson's ratio" },
  sources: [],
  evidence: {
    form: { tag: 'chosen', derived: 'least strain energy of an orthotropic layer over all directions of strain' },
  },
  limits: [],
});
