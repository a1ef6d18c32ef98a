import { formula, positive } from '../../formula/index.js';
import type { Density } from '../../quantity/index.js';

export interface MassPartsInput {
  readonly partsA: number;
  readonly partsB: number;
  readonly densityA: Density;
  readonly densityB: Density;
}

/**
 * Parts of B for 100 parts of A by mass, from a mixing ratio by volume.
 *
 * $$p_m = 100 \frac{P_B}{P_A} \frac{\rho_B}{\rho_A}$$
 *
 * @param input.partsA P_A, parts of A by volume, > 0
 * @param input.partsB P_B, parts of B by volume, > 0
 * @param input.densityA rho_A, density of A [kg/m3], > 0
 * @param input.densityB rho_B, density of B [kg/m3], > 0
 * @returns parts of B for 100 parts of A by mass
 * @throws CalculationError `invalid-input`
 * @remarks A ratio by volume is not the ratio by mass unless both densities are equal. Weighing is the surer way.
 */
export function massParts(input: MassPartsInput): number {
  const { partsA: PA, partsB: PB, densityA: rhoA, densityB: rhoB } = input;
  positive(PA, 'partsA', '');
  positive(PB, 'partsB', '');
  positive(rhoA, 'densityA', 'kg/m3');
  positive(rhoB, 'densityB', 'kg/m3');
  const p = (100 * PB * rhoB) / (PA * rhoA);
  positive(p, 'massParts', '');
  return p;
}

export const massPartsFormula = /* @__PURE__ */ formula<MassPartsInput, number>({
  id: 'resin/mass-parts',
  title: 'Parts of B by mass from parts by volume',
  search: ['mix ratio', 'by weight'],
  compute: massParts,
  equation: { expression: '100 * P_B * rho_B / (P_A * rho_A)' },
  inputs: {
    partsA: { symbol: 'P_A', kind: 'number', name: 'parts of A by volume', sample: [1, 100] },
    partsB: { symbol: 'P_B', kind: 'number', name: 'parts of B by volume', sample: [1, 100] },
    densityA: { symbol: 'rho_A', kind: 'density', name: 'density of A', sample: [900, 2000] },
    densityB: { symbol: 'rho_B', kind: 'density', name: 'density of B', sample: [900, 1600] },
  },
  output: { symbol: 'p_m', kind: 'number', name: 'parts of B for 100 parts of A by mass' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'masses of two measured volumes' } },
  limits: [],
});
