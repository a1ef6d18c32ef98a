import { finite, formula, properFraction, within } from '../../formula/index.js';
import type { ThermalExpansion } from '../../quantity/index.js';

export interface AcrossExpansionSchaperyInput {
  readonly fibreExpansion: ThermalExpansion;
  readonly matrixExpansion: ThermalExpansion;
  readonly fibrePoisson: number;
  readonly matrixPoisson: number;
  readonly fibreVolumeFraction: number;
  readonly alongExpansion: ThermalExpansion;
}

/**
 * Thermal expansion of a ply across its fibres, where the fibre is alike in all directions (Schapery).
 *
 * $$\alpha_2 = (1 + \nu_f) \alpha_f V_f + (1 + \nu_m) \alpha_m (1 - V_f) - \alpha_1 \nu_{12},\quad
 * \nu_{12} = \nu_f V_f + \nu_m (1 - V_f)$$
 *
 * @param input.fibreExpansion       alpha_f [1/K], of either sign
 * @param input.matrixExpansion      alpha_m [1/K], of either sign
 * @param input.fibrePoisson         nu_f, from 0 to 0.5
 * @param input.matrixPoisson        nu_m, from 0 to 0.5
 * @param input.fibreVolumeFraction  V_f, from 0 up to, not including, 1
 * @param input.alongExpansion       alpha_1 [1/K], of either sign
 * @returns expansion [1/K]
 * @throws CalculationError `invalid-input`
 * @see Schapery 1968, by Kaw, as recalled
 */
export function acrossExpansionSchapery(input: AcrossExpansionSchaperyInput): ThermalExpansion {
  const {
    fibreExpansion: af,
    matrixExpansion: am,
    fibrePoisson: nuf,
    matrixPoisson: num,
    fibreVolumeFraction: V,
    alongExpansion: a1,
  } = input;
  finite(af, 'fibreExpansion', '1/K');
  finite(am, 'matrixExpansion', '1/K');
  within(nuf, 0, 0.5, 'fibrePoisson', '');
  within(num, 0, 0.5, 'matrixPoisson', '');
  properFraction(V, 'fibreVolumeFraction');
  finite(a1, 'alongExpansion', '1/K');
  const result = (1 + nuf) * af * V + (1 + num) * am * (1 - V) - a1 * (nuf * V + num * (1 - V));
  finite(result, 'expansion across the fibres', '1/K');
  return result as ThermalExpansion;
}

export const acrossExpansionSchaperyFormula = /* @__PURE__ */ formula<AcrossExpansionSchaperyInput, ThermalExpansion>({
  id: 'laminate/across-expansion-schapery',
  title: 'Expansion across the fibres, Schapery',
  search: ['thermal expansion', 'cte'],
  compute: acrossExpansionSchapery,
  equation: {
    where: [{ symbol: 'nu_12', kind: 'number', expression: 'nu_f * V_f + nu_m * (1 - V_f)' }],
    expression: '(1 + nu_f) * alpha_f * V_f + (1 + nu_m) * alpha_m * (1 - V_f) - alpha_1 * nu_12',
  },
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
    fibrePoisson: { symbol: 'nu_f', kind: 'number', name: "Poisson's ratio of the fibre", sample: [0.1, 0.35] },
    matrixPoisson: { symbol: 'nu_m', kind: 'number', name: "Poisson's ratio of the matrix", sample: [0.3, 0.45] },
    fibreVolumeFraction: { symbol: 'V_f', kind: 'number', name: 'fibre volume fraction', sample: [0.2, 0.7] },
    alongExpansion: {
      symbol: 'alpha_1',
      kind: 'thermal expansion',
      name: 'expansion of the ply along its fibres',
      sample: [1e-6, 1e-5],
    },
  },
  output: { symbol: 'alpha_2', kind: 'thermal expansion', name: 'expansion across the fibres' },
  sources: [{ key: 'kaw-as-recalled', locator: 'chapter 3, after Schapery 1968' }],
  evidence: { form: { tag: 'recalled', derived: 'one expansion for fibre and matrix, where they are the same' } },
  limits: [],
});
