import { formula, positive } from '../../formula/index.js';
import type { Density } from '../../quantity/index.js';

export interface VolumePartsInput {
  readonly partsA: number;
  readonly partsB: number;
  readonly densityA: Density;
  readonly densityB: Density;
}

/**
 * Parts of B for 100 parts of A by volume, from a mixing ratio by mass.
 *
 * $$p_V = 100 \frac{P_B}{P_A} \frac{\rho_A}{\rho_B}$$
 *
 * @param input.partsA P_A, parts of A by mass, > 0
 * @param input.partsB P_B, parts of B by mass, > 0
 * @param input.densityA rho_A, density of A [kg/m3], > 0
 * @param input.densityB rho_B, density of B [kg/m3], > 0
 * @returns parts of B for 100 parts of A by volume
 * @throws CalculationError `invalid-input`
 */
export function volumeParts(input: VolumePartsInput): number {
  const { partsA: PA, partsB: PB, densityA: rhoA, densityB: rhoB } = input;
  positive(PA, 'partsA', '');
  positive(PB, 'partsB', '');
  positive(rhoA, 'densityA', 'kg/m3');
  positive(rhoB, 'densityB', 'kg/m3');
  const p = (100 * PB * rhoA) / (PA * rhoB);
  positive(p, 'volumeParts', '');
  return p;
}

export const volumePartsFormula = /* @__PURE__ */ formula<VolumePartsInput, number>({
  id: 'resin/volume-parts',
  title: 'Parts of B by volume from parts by mass',
  search: ['mix ratio'],
  compute: volumeParts,
  equation: { expression: '100 * P_B * rho_A / (P_A * rho_B)' },
  inputs: {
    partsA: { symbol: 'P_A', kind: 'number', name: 'parts of A by mass', sample: [1, 100] },
    partsB: { symbol: 'P_B', kind: 'number', name: 'parts of B by mass', sample: [1, 100] },
    densityA: { symbol: 'rho_A', kind: 'density', name: 'density of A', sample: [900, 2000] },
    densityB: { symbol: 'rho_B', kind: 'density', name: 'density of B', sample: [900, 1600] },
  },
  output: { symbol: 'p_V', kind: 'number', name: 'parts of B for 100 parts of A by volume' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'inverse of the parts by mass' } },
  limits: [],
});
