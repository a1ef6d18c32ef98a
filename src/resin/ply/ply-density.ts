import { atMost, finite, formula, positive } from '../../formula/index.js';
import type { ArealWeight, Density, Length, Ratio } from '../../quantity/index.js';

export interface PlyDensityInput {
  readonly arealWeight: ArealWeight;
  readonly fibreMassFraction: Ratio;
  readonly plyThickness: Length;
}

/**
 * Density that a ply would have to have for its fabric, its share of fibre and its thickness to be those of one laminate.
 *
 * $$\rho = \frac{W_f}{w_f t}$$
 *
 * @param input.arealWeight        W_f, mass of dry fabric per area of one ply [kg/m2], > 0
 * @param input.fibreMassFraction  w_f, mass of fibre in the mass of the laminate [1], above 0, at most 1
 * @param input.plyThickness       t [m], > 0
 * @returns density [kg/m3]
 * @throws CalculationError `invalid-input`
 * @remarks Glass in epoxy comes to 1600 to 2000 kg/m3, carbon to 1400 to 1600: far from that one of the three is wrong.
 */
export function plyDensity(input: PlyDensityInput): Density {
  const { arealWeight: W, fibreMassFraction: w, plyThickness: t } = input;
  positive(W, 'arealWeight', 'kg/m2');
  positive(w, 'fibreMassFraction', '');
  atMost(w, 1, 'the whole', 'fibreMassFraction', '');
  positive(t, 'plyThickness', 'm');
  const density = W / (w * t);
  finite(density, 'density of the ply', 'kg/m3');
  return density as Density;
}

export const plyDensityFormula = /* @__PURE__ */ formula<PlyDensityInput, Density>({
  id: 'resin/ply-density',
  title: 'Density of a ply by its fabric',
  compute: plyDensity,
  equation: { expression: 'W_f / (w_f * t)' },
  inputs: {
    arealWeight: { symbol: 'W_f', kind: 'areal weight', name: 'dry fabric of one ply', sample: [0.2, 1.2] },
    fibreMassFraction: { symbol: 'w_f', kind: 'ratio', name: 'mass fraction of fibre', sample: [0.3, 0.75] },
    plyThickness: { symbol: 't', kind: 'length', name: 'thickness of the ply', sample: [0.0002, 0.002] },
  },
  output: { symbol: 'rho', kind: 'density', name: 'density of the ply' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'mass over volume' } },
  limits: [],
});
