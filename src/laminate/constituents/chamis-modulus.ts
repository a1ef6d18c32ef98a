import { finite, formula, positive, properFraction } from '../../formula/index.js';
import type { Modulus } from '../../quantity/index.js';

export interface ChamisModulusInput {
  readonly fibreModulus: Modulus;
  readonly matrixModulus: Modulus;
  readonly fibreVolumeFraction: number;
}

/**
 * Modulus of a ply across its fibres, or in shear, from a square array (Chamis).
 *
 * $$P = \frac{P_m}{1 - \sqrt{V_f} (1 - P_m/P_f)}$$
 *
 * @param input.fibreModulus         P_f [Pa], > 0
 * @param input.matrixModulus        P_m [Pa], > 0
 * @param input.fibreVolumeFraction  V_f, from 0 up to, not including, 1
 * @returns modulus [Pa]
 * @throws CalculationError `invalid-input`
 * @see Chamis, NASA TM-83320, 1983
 */
export function chamisModulus(input: ChamisModulusInput): Modulus {
  const { fibreModulus: Pf, matrixModulus: Pm, fibreVolumeFraction: V } = input;
  positive(Pf, 'fibreModulus', 'Pa');
  positive(Pm, 'matrixModulus', 'Pa');
  properFraction(V, 'fibreVolumeFraction');
  const result = Pm / (1 - Math.sqrt(V) * (1 - Pm / Pf));
  finite(result, 'modulus across the fibres, or in shear', 'Pa');
  return result as Modulus;
}

export const chamisModulusFormula = /* @__PURE__ */ formula<ChamisModulusInput, Modulus>({
  id: 'laminate/chamis-modulus',
  title: 'Modulus across the fibres, Chamis',
  compute: chamisModulus,
  equation: { expression: 'P_m / (1 - sqrt(V_f) * (1 - P_m / P_f))' },
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
  sources: [{ key: 'nasa-tm-83320', locator: 'ply properties, examples 4.1 and 4.2' }],
  evidence: { form: { tag: 'secondary', derived: 'a square of fibre and matrix in a column, beside matrix' } },
  limits: [],
});
