import { atMost, formula, positive } from '../../formula/index.js';
import type { Density, Ratio } from '../../quantity/index.js';

export interface FibreMassFractionInput {
  readonly fibreVolumeFraction: Ratio;
  readonly fibreDensity: Density;
  readonly resinDensity: Density;
}

/**
 * Mass of fibre in the mass of a laminate without voids, from its fibre volume fraction.
 *
 * $$w_f = \frac{V_f \rho_f}{V_f \rho_f + (1 - V_f) \rho_m}$$
 *
 * @param input.fibreVolumeFraction V_f, volume of fibre in the volume of fibre and resin [1], above 0, at most 1
 * @param input.fibreDensity rho_f, density of the fibre [kg/m3], > 0
 * @param input.resinDensity rho_m, density of the cured resin [kg/m3], > 0
 * @returns fibre mass fraction [1]
 * @throws CalculationError `invalid-input`
 * @see worked examples of mixing on public web pages
 */
export function fibreMassFraction(input: FibreMassFractionInput): Ratio {
  const { fibreVolumeFraction: Vf, fibreDensity: rhoF, resinDensity: rhoM } = input;
  positive(Vf, 'fibreVolumeFraction', '');
  atMost(Vf, 1, 'the whole', 'fibreVolumeFraction', '');
  positive(rhoF, 'fibreDensity', 'kg/m3');
  positive(rhoM, 'resinDensity', 'kg/m3');
  const fibre = Vf * rhoF;
  const wF = fibre / (fibre + (1 - Vf) * rhoM);
  positive(wF, 'fibreMassFraction', '');
  return wF as Ratio;
}

export const fibreMassFractionFormula = /* @__PURE__ */ formula<FibreMassFractionInput, Ratio>({
  id: 'resin/fibre-mass-fraction',
  title: 'Fibre mass fraction from the volume fraction',
  search: ['glass content'],
  compute: fibreMassFraction,
  equation: { expression: 'V_f * rho_f / (V_f * rho_f + (1 - V_f) * rho_m)' },
  inputs: {
    fibreVolumeFraction: {
      symbol: 'V_f',
      kind: 'ratio',
      name: 'volume of fibre in the volume of fibre and resin',
      sample: [0.1, 0.75],
    },
    fibreDensity: { symbol: 'rho_f', kind: 'density', name: 'density of the fibre', sample: [1400, 2700] },
    resinDensity: { symbol: 'rho_m', kind: 'density', name: 'density of the cured resin', sample: [950, 1400] },
  },
  output: { symbol: 'w_f', kind: 'ratio', name: 'fibre mass fraction' },
  sources: [{ key: 'web-mixing-examples', locator: 'volume to mass fraction of carbon and epoxy' }],
  evidence: { form: { tag: 'secondary', derived: 'inverse of the volume fraction' } },
  limits: [],
});
