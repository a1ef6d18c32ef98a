import { finite, formula, positive, properFraction } from '../../formula/index.js';
import type { Modulus } from '../../quantity/index.js';

export interface InverseRuleOfMixturesInput {
  readonly fibreModulus: Modulus;
  readonly matrixModulus: Modulus;
  readonly fibreVolumeFraction: number;
}

/**
 * Modulus of a ply across its fibres, or in shear, with fibre and matrix one behind the other: the lower bound.
 *
 * $$\frac{1}{P} = \frac{V_f}{P_f} + \frac{1 - V_f}{P_m}$$
 *
 * @param input.fibreModulus         P_f [Pa], > 0
 * @param input.matrixModulus        P_m [Pa], > 0
 * @param input.fibreVolumeFraction  V_f, from 0 up to, not including, 1
 * @returns modulus [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks Too soft: the safe side where stiffness helps.
 * @see course notes on composite materials
 */
export function inverseRuleOfMixtures(input: InverseRuleOfMixturesInput): Modulus {
  const { fibreModulus: Pf, matrixModulus: Pm, fibreVolumeFraction: V } = input;
  positive(Pf, 'fibreModulus', 'Pa');
  positive(Pm, 'matrixModulus', 'Pa');
  properFraction(V, 'fibreVolumeFraction');
  const result = 1 / (V / Pf + (1 - V) / Pm);
  finite(result, 'modulus across the fibres, or in shear', 'Pa');
  return result as Modulus;
}

export const inverseRuleOfMixturesFormula = /* @__PURE__ */ formula<InverseRuleOfMixturesInput, Modulus>({
  id: 'laminate/inverse-rule-of-mixtures',
  title: 'Modulus across the fibres, inverse rule',
  search: ['micromechanics', 'transverse modulus'],
  compute: inverseRuleOfMixtures,
  equation: { expression: '1 / (V_f / P_f + (1 - V_f) / P_m)' },
  inputs: {
    fibreModulus: {
      symbol: 'P_f',
      kind: 'modulus',
      name: 'modulus of the fibre across it, or in shear',
      sample: [10e9, 90e9],
    },
    matrixModulus: { symbol: 'P_m', kind: 'modulus', name: 'the same modulus of the matrix', sample: [1e9, 4e9] },
    fibreVolumeFraction: { symbol: 'V_f', kind: 'number', name: 'fibre volume fraction', sample: [0.2, 0.7] },
  },
  output: { symbol: 'P', kind: 'modulus', name: 'modulus across the fibres, or in shear' },
  sources: [{ key: 'composite-course-notes', locator: 'ply moduli, example 14.5-1' }],
  evidence: { form: { tag: 'secondary', derived: 'fibre and matrix one behind the other under one stress' } },
  limits: [],
});
