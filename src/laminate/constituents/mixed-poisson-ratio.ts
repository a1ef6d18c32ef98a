import { finite, formula, properFraction, within } from '../../formula/index.js';

export interface MixedPoissonRatioInput {
  readonly fibrePoisson: number;
  readonly matrixPoisson: number;
  readonly fibreVolumeFraction: number;
}

/**
 * Poisson's ratio of a ply, loaded along its fibres; voids count as matrix.
 *
 * $$\nu_{12} = \nu_f V_f + \nu_m (1 - V_f)$$
 *
 * @param input.fibrePoisson         nu_f, from 0 to 0.5
 * @param input.matrixPoisson        nu_m, from 0 to 0.5
 * @param input.fibreVolumeFraction  V_f, from 0 up to, not including, 1
 * @returns Poisson's ratio nu_12
 * @throws CalculationError `invalid-input`
 * @remarks The print of NASA TP-2515 reproduces only with the voids counted as matrix.
 * @see Chamis, NASA TM-83320, 1983
 */
export function mixedPoissonRatio(input: MixedPoissonRatioInput): number {
  const { fibrePoisson: nuf, matrixPoisson: num, fibreVolumeFraction: V } = input;
  within(nuf, 0, 0.5, 'fibrePoisson', '');
  within(num, 0, 0.5, 'matrixPoisson', '');
  properFraction(V, 'fibreVolumeFraction');
  const result = nuf * V + num * (1 - V);
  finite(result, "Poisson's ratio of the ply", '');
  return result;
}

export const mixedPoissonRatioFormula = /* @__PURE__ */ formula<MixedPoissonRatioInput, number>({
  id: 'laminate/mixed-poisson-ratio',
  title: "Poisson's ratio of a ply",
  compute: mixedPoissonRatio,
  equation: { expression: 'nu_f * V_f + nu_m * (1 - V_f)' },
  inputs: {
    fibrePoisson: { symbol: 'nu_f', kind: 'number', name: "Poisson's ratio of the fibre", sample: [0.1, 0.35] },
    matrixPoisson: { symbol: 'nu_m', kind: 'number', name: "Poisson's ratio of the matrix", sample: [0.3, 0.45] },
    fibreVolumeFraction: { symbol: 'V_f', kind: 'number', name: 'fibre volume fraction', sample: [0.2, 0.7] },
  },
  output: { symbol: 'nu_12', kind: 'number', name: "Poisson's ratio of the ply" },
  sources: [
    { key: 'nasa-tm-83320', locator: 'ply properties, example 4.2' },
    { key: 'nasa-tp-2515', locator: 'sample output' },
  ],
  evidence: { form: { tag: 'secondary', derived: 'fibre and matrix side by side at one strain' } },
  limits: [],
});
