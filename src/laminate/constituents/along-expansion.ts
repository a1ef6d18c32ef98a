import { finite, formula, positive, properFraction } from '../../formula/index.js';
import type { Modulus, ThermalExpansion } from '../../quantity/index.js';

export interface AlongExpansionInput {
  readonly fibreExpansion: ThermalExpansion;
  readonly matrixExpansion: ThermalExpansion;
  readonly fibreModulus: Modulus;
  readonly matrixModulus: Modulus;
  readonly fibreVolumeFraction: number;
}

/**
 * Thermal expansion of a ply along its fibres (Schapery).
 *
 * $$\alpha_1 = \frac{\alpha_f E_f V_f + \alpha_m E_m (1 - V_f)}{E_f V_f + E_m (1 - V_f)}$$
 *
 * @param input.fibreExpansion       alpha_f [1/K], of either sign
 * @param input.matrixExpansion      alpha_m [1/K], of either sign
 * @param input.fibreModulus         E_f [Pa], > 0
 * @param input.matrixModulus        E_m [Pa], > 0
 * @param input.fibreVolumeFraction  V_f, from 0 up to, not including, 1
 * @returns expansion [1/K]
 * @throws CalculationError `invalid-input`
 * @see Chamis, NASA TM-83320, 1983
 */
export function alongExpansion(input: AlongExpansionInput): ThermalExpansion {
  const {
    fibreExpansion: af,
    matrixExpansion: am,
    fibreModulus: Ef,
    matrixModulus: Em,
    fibreVolumeFraction: V,
  } = input;
  finite(af, 'fibreExpansion', '1/K');
  finite(am, 'matrixExpansion', '1/K');
  positive(Ef, 'fibreModulus', 'Pa');
  positive(Em, 'matrixModulus', 'Pa');
  properFraction(V, 'fibreVolumeFraction');
  const result = (af * Ef * V + am * Em * (1 - V)) / (Ef * V + Em * (1 - V));
  finite(result, 'expansion along the fibres', '1/K');
  return result as ThermalExpansion;
}

export const alongExpansionFormula = /* @__PURE__ */ formula<AlongExpansionInput, ThermalExpansion>({
  id: 'laminate/along-expansion',
  title: 'Expansion along the fibres',
  search: ['thermal expansion', 'cte'],
  compute: alongExpansion,
  equation: { expression: '(alpha_f * E_f * V_f + alpha_m * E_m * (1 - V_f)) / (E_f * V_f + E_m * (1 - V_f))' },
  inputs: {
    fibreExpansion: {
      symbol: 'alpha_f',
      kind: 'thermal expansion',
      name: 'expansion of the fibre along it',
      sample: [1e-6, 6e-6],
    },
    matrixExpansion: {
      symbol: 'alpha_m',
      kind: 'thermal expansion',
      name: 'expansion of the matrix',
      sample: [3e-5, 1e-4],
    },
    fibreModulus: { symbol: 'E_f', kind: 'modulus', name: 'modulus of the fibre along it', sample: [70e9, 240e9] },
    matrixModulus: { symbol: 'E_m', kind: 'modulus', name: 'modulus of the matrix', sample: [2e9, 4e9] },
    fibreVolumeFraction: { symbol: 'V_f', kind: 'number', name: 'fibre volume fraction', sample: [0.2, 0.7] },
  },
  output: { symbol: 'alpha_1', kind: 'thermal expansion', name: 'expansion along the fibres' },
  sources: [{ key: 'nasa-tm-83320', locator: 'thermal expansion of a ply' }],
  evidence: { form: { tag: 'secondary', derived: 'fibre and matrix side by side, their forces in balance' } },
  limits: [],
});
