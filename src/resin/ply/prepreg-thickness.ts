import { atMost, formula, positive } from '../../formula/index.js';
import type { ArealWeight, Density, Length, Ratio } from '../../quantity/index.js';

export interface PrepregThicknessInput {
  readonly totalArealWeight: ArealWeight;
  readonly fibreMassFraction: Ratio;
  readonly fibreDensity: Density;
  readonly resinDensity: Density;
}

/**
 * Cured thickness of one ply, from its total weight with resin; for prepreg and for a weighed laminate.
 *
 * $$t = W \left[\frac{w_f}{\rho_f} + \frac{1 - w_f}{\rho_m}\right]$$
 *
 * @param input.totalArealWeight W, mass of fabric and resin per area of one ply [kg/m2], > 0
 * @param input.fibreMassFraction w_f, mass of fibre in the mass of the laminate [1], above 0, at most 1
 * @param input.fibreDensity rho_f, density of the fibre [kg/m3], > 0
 * @param input.resinDensity rho_m, density of the cured resin [kg/m3], > 0
 * @returns ply thickness [m]
 * @throws CalculationError `invalid-input`
 * @see worked examples of mixing on public web pages
 */
export function prepregThickness(input: PrepregThicknessInput): Length {
  const { totalArealWeight: W, fibreMassFraction: wF, fibreDensity: rhoF, resinDensity: rhoM } = input;
  positive(W, 'totalArealWeight', 'kg/m2');
  positive(wF, 'fibreMassFraction', '');
  atMost(wF, 1, 'the whole', 'fibreMassFraction', '');
  positive(rhoF, 'fibreDensity', 'kg/m3');
  positive(rhoM, 'resinDensity', 'kg/m3');
  const t = W * (wF / rhoF + (1 - wF) / rhoM);
  positive(t, 'prepregThickness', 'm');
  return t as Length;
}

export const prepregThicknessFormula = /* @__PURE__ */ formula<PrepregThicknessInput, Length>({
  id: 'resin/prepreg-thickness',
  title: 'Ply thickness from the total weight',
  search: ['cured ply thickness'],
  compute: prepregThickness,
  equation: { expression: 'W * (w_f / rho_f + (1 - w_f) / rho_m)' },
  inputs: {
    totalArealWeight: {
      symbol: 'W',
      kind: 'areal weight',
      name: 'mass of fabric and resin per area of one ply',
      sample: [0.1, 3],
    },
    fibreMassFraction: {
      symbol: 'w_f',
      kind: 'ratio',
      name: 'mass of fibre in the mass of the laminate',
      sample: [0.2, 0.85],
    },
    fibreDensity: { symbol: 'rho_f', kind: 'density', name: 'density of the fibre', sample: [1400, 2700] },
    resinDensity: { symbol: 'rho_m', kind: 'density', name: 'density of the cured resin', sample: [950, 1400] },
  },
  output: { symbol: 't', kind: 'length', name: 'ply thickness' },
  sources: [{ key: 'web-mixing-examples', locator: 'prepreg of 225 g/m2' }],
  evidence: { form: { tag: 'secondary', derived: 'volumes of a unit area' } },
  limits: [],
});
