import { finite, formula, positive, properFraction, within } from '../../formula/index.js';
import type { Modulus, ThermalExpansion } from '../../quantity/index.js';

export interface AcrossExpansionChamisInput {
  readonly fibreExpansion: ThermalExpansion;
  readonly matrixExpansion: ThermalExpansion;
  readonly matrixPoisson: number;
  readonly fibreModulus: Modulus;
  readonly alongModulus: Modulus;
  readonly fibreVolumeFraction: number;
}

/**
 * Thermal expansion of a ply across its fibres, where the fibre is not alike in all directions (Chamis).
 *
 * $$\alpha_2 = \alpha_{f2} \sqrt{V_f} + (1 - \sqrt{V_f}) \left(1 + V_f \nu_m \frac{E_f}{E_1}\right) \alpha_m$$
 *
 * @param input.fibreExpansion       alpha_f2 [1/K], of either sign
 * @param input.matrixExpansion      alpha_m [1/K], of either sign
 * @param input.matrixPoisson        nu_m, from 0 to 0.5
 * @param input.fibreModulus         E_f [Pa], > 0
 * @param input.alongModulus         E_1 [Pa], > 0
 * @param input.fibreVolumeFraction  V_f, from 0 up to, not including, 1
 * @returns expansion [1/K]
 * @throws CalculationError `invalid-input`
 * @see Chamis, NASA TM-83320, 1983
 */
export function acrossExpansionChamis(input: AcrossExpansionChamisInput): ThermalExpansion {
  const {
    fibreExpansion: af,
    matrixExpansion: am,
    matrixPoisson: num,
    fibreModulus: Ef,
    alongModulus: E1,
    fibreVolumeFraction: V,
  } = input;
  finite(af, 'fibreExpansion', '1/K');
  finite(am, 'matrixExpansion', '1/K');
  within(num, 0, 0.5, 'matrixPoisson', '');
  positive(Ef, 'fibreModulus', 'Pa');
  positive(E1, 'alongModulus', 'Pa');
  properFraction(V, 'fibreVolumeFraction');
  const root = Math.sqrt(V);
  const result = af * root + (1 - root) * (1 + V * num * (Ef / E1)) * am;
  finite(result, 'expansion across the fibres', '1/K');
  return result as ThermalExpansion;
}

export const acrossExpansionChamisFormula = /* @__PURE__ */ formula<AcrossExpansionChamisInput, ThermalExpansion>({
  id: 'laminate/across-expansion-chamis',
  title: 'Expansion across the fibres, Chamis',
  search: ['thermal expansion', 'cte'],
  compute: acrossExpansionChamis,
  equation: { expression: 'alpha_f2 * sqrt(V_f) + (1 - sqrt(V_f)) * (1 + V_f * nu_m * E_f / E_1) * alpha_m' },
  inputs: {
    fibreExpansion: {
      symbol: 'alpha_f2',
      kind: 'thermal expansion',
      name: 'expansion of the fibre across it',
      sample: [4e-6, 1.2e-5],
    },
    matrixExpansion: {
      symbol: 'alpha_m',
      kind: 'thermal expansion',
      name: 'expansion of the matrix',
      sample: [3e-5, 1e-4],
    },
    matrixPoisson: { symbol: 'nu_m', kind: 'number', name: "Poisson's ratio of the matrix", sample: [0.3, 0.45] },
    fibreModulus: { symbol: 'E_f', kind: 'modulus', name: 'modulus of the fibre along it', sample: [70e9, 240e9] },
    alongModulus: {
      symbol: 'E_1',
      kind: 'modulus',
      name: 'modulus of the ply along its fibres',
      sample: [20e9, 160e9],
    },
    fibreVolumeFraction: { symbol: 'V_f', kind: 'number', name: 'fibre volume fraction', sample: [0.2, 0.7] },
  },
  output: { symbol: 'alpha_2', kind: 'thermal expansion', name: 'expansion across the fibres' },
  sources: [{ key: 'nasa-tm-83320', locator: 'examples 8.1 and 8.2' }],
  evidence: { form: { tag: 'secondary', derived: 'nothing but fibre at V_f near 1, nothing but matrix at 0' } },
  limits: [],
});
