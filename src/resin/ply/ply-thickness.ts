import { atMost, formula, positive, properFraction } from '../../formula/index.js';
import type { ArealWeight, Density, Length, Ratio } from '../../quantity/index.js';

export interface PlyThicknessInput {
  readonly arealWeight: ArealWeight;
  readonly fibreMassFraction: Ratio;
  readonly fibreDensity: Density;
  readonly resinDensity: Density;
  readonly voidFraction?: Ratio | undefined;
}

/**
 * Cured thickness of one ply, from the weight of its dry fabric.
 *
 * $$t = \frac{W_f}{1 - v}\left[\frac{1}{\rho_f} + \frac{1/w_f - 1}{\rho_m}\right]$$
 *
 * @param input.arealWeight W_f, mass of dry fabric per area of one ply [kg/m2], > 0
 * @param input.fibreMassFraction w_f, mass of fibre in the mass of the laminate [1], above 0, at most 1
 * @param input.fibreDensity rho_f, density of the fibre [kg/m3], > 0
 * @param input.resinDensity rho_m, density of the cured resin [kg/m3], > 0
 * @param input.voidFraction v, volume of voids in the volume of the laminate [1], from 0 up to, not including, 1; 0
 *   when not given
 * @returns ply thickness [m]
 * @throws CalculationError `invalid-input`
 * @remarks A measured ply thickness is always better: the fibre fraction of hand work varies.
 * @see composite thickness note on a public web page; ISO 12215-5, annex C, as recalled
 */
export function plyThickness(input: PlyThicknessInput): Length {
  const {
    arealWeight: Wf,
    fibreMassFraction: wF,
    fibreDensity: rhoF,
    resinDensity: rhoM,
    voidFraction: v = 0 as Ratio,
  } = input;
  positive(Wf, 'arealWeight', 'kg/m2');
  positive(wF, 'fibreMassFraction', '');
  atMost(wF, 1, 'the whole', 'fibreMassFraction', '');
  positive(rhoF, 'fibreDensity', 'kg/m3');
  positive(rhoM, 'resinDensity', 'kg/m3');
  properFraction(v, 'voidFraction');
  const t = (Wf / (1 - v)) * (1 / rhoF + (1 / wF - 1) / rhoM);
  positive(t, 'plyThickness', 'm');
  return t as Length;
}

export const plyThicknessFormula = /* @__PURE__ */ formula<PlyThicknessInput, Length>({
  id: 'resin/ply-thickness',
  title: 'Ply thickness from the dry fabric',
  search: ['fabric weight', 'gsm'],
  compute: plyThickness,
  equation: { expression: 'W_f / (1 - v) * (1 / rho_f + (1 / w_f - 1) / rho_m)' },
  inputs: {
    arealWeight: {
      symbol: 'W_f',
      kind: 'areal weight',
      name: 'mass of dry fabric per area of one ply',
      sample: [0.1, 1.5],
    },
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
  output: { symbol: 't', kind: 'length', name: 'ply thickness' },
  sources: [
    { key: 'web-mixing-examples', locator: 'composite thickness note' },
    { key: 'iso-12215-5', locator: 'annex C, thickness of glass laminates' },
  ],
  evidence: { form: { tag: 'secondary', derived: 'fabric weight over fibre volume fraction' } },
  limits: [],
});
