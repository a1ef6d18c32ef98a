import { atMost, formula, positive, properFraction } from '../../formula/index.js';
import type { Density, Ratio } from '../../quantity/index.js';

export interface FibreVolumeFractionInput {
  readonly fibreMassFraction: Ratio;
  readonly fibreDensity: Density;
  readonly resinDensity: Density;
  readonly voidFraction?: Ratio | undefined;
}

/**
 * Volume of fibre in the volume of a laminate, from its fibre mass fraction and voids.
 *
 * $$V_f = \frac{1 - v}{1 + \frac{\rho_f}{\rho_m}\left(\frac{1}{w_f} - 1\right)}$$
 *
 * @param input.fibreMassFraction w_f, mass of fibre in the mass of the laminate [1], above 0, at most 1
 * @param input.fibreDensity rho_f, density of the fibre [kg/m3], > 0
 * @param input.resinDensity rho_m, density of the cured resin [kg/m3], > 0
 * @param input.voidFraction v, volume of voids in the volume of the laminate [1], from 0 up to, not including, 1; 0
 *   when not given
 * @returns fibre volume fraction [1]
 * @throws CalculationError `invalid-input`
 * @see NASA TM-83320, examples 4.1 and 5.1
 */
export function fibreVolumeFraction(input: FibreVolumeFractionInput): Ratio {
  const { fibreMassFraction: wF, fibreDensity: rhoF, resinDensity: rhoM, voidFraction: v = 0 as Ratio } = input;
  positive(wF, 'fibreMassFraction', '');
  atMost(wF, 1, 'the whole', 'fibreMassFraction', '');
  positive(rhoF, 'fibreDensity', 'kg/m3');
  positive(rhoM, 'resinDensity', 'kg/m3');
  properFraction(v, 'voidFraction');
  const Vf = (1 - v) / (1 + (rhoF / rhoM) * (1 / wF - 1));
  positive(Vf, 'fibreVolumeFraction', '');
  return Vf as Ratio;
}

export const fibreVolumeFractionFormula = /* @__PURE__ */ formula<FibreVolumeFractionInput, Ratio>({
  id: 'resin/fibre-volume-fraction',
  title: 'Fibre volume fraction from the mass fraction',
  search: ['glass content', 'vf'],
  compute: fibreVolumeFraction,
  equation: { expression: '(1 - v) / (1 + rho_f / rho_m * (1 / w_f - 1))' },
  inputs: {
    fibreMassFraction: {
      symbol: 'w_f',
      kind: 'ratio',
      name: 'mass of fibre in the mass of the laminate',
      sample: [0.2, 0.85],
    },
    fibreDensity: { symbol: 'rho_f', kind: 'density', name: 'density of the fibre', sample: [1400, 2700] },
    resinDensity: { symbol: 'rho_m', kind: 'density', name: 'density of the cured resin', sample: [950, 1400] },
    voidFraction: {
      symbol: 'v',
      kind: 'ratio',
      name: 'volume of voids in the volume of the laminate',
      sample: [0, 0.1],
      default: 0,
    },
  },
  output: { symbol: 'V_f', kind: 'ratio', name: 'fibre volume fraction' },
  sources: [{ key: 'nasa-tm-83320', locator: 'examples 4.1 and 5.1' }],
  evidence: { form: { tag: 'secondary', derived: 'volumes of a unit mass' } },
  limits: [],
});
