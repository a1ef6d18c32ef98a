import { formula, positive } from '../../formula/index.js';
import type { Area, Volume } from '../../quantity/index.js';

export interface CoverageVolumeInput {
  readonly area: Area;
  readonly coveredArea: Area;
  readonly coveredVolume: Volume;
}

/**
 * Volume needed for an area, from the area that a stated volume covers.
 *
 * $$V = A \frac{V_1}{A_1}$$
 *
 * @param input.area A, area to cover [m2], > 0
 * @param input.coveredArea A_1, area that the stated volume covers [m2], > 0
 * @param input.coveredVolume V_1, stated volume [m3], > 0
 * @returns volume [m3]
 * @throws CalculationError `invalid-input`
 * @remarks For coats of different coverage, one call a coat and the sum.
 * @see worked examples of mixing on public web pages
 */
export function coverageVolume(input: CoverageVolumeInput): Volume {
  const { area: A, coveredArea: A1, coveredVolume: V1 } = input;
  positive(A, 'area', 'm2');
  positive(A1, 'coveredArea', 'm2');
  positive(V1, 'coveredVolume', 'm3');
  const V = (A * V1) / A1;
  positive(V, 'coverageVolume', 'm3');
  return V as Volume;
}

export const coverageVolumeFormula = /* @__PURE__ */ formula<CoverageVolumeInput, Volume>({
  id: 'resin/coverage-volume',
  title: 'Volume from a coverage',
  search: ['spread rate'],
  compute: coverageVolume,
  equation: { expression: 'A * V_1 / A_1' },
  inputs: {
    area: { symbol: 'A', kind: 'area', name: 'area to cover', sample: [0.01, 2000] },
    coveredArea: { symbol: 'A_1', kind: 'area', name: 'area that the stated volume covers', sample: [0.1, 50] },
    coveredVolume: { symbol: 'V_1', kind: 'volume', name: 'stated volume', sample: [0.0001, 0.02] },
  },
  output: { symbol: 'V', kind: 'volume', name: 'volume for the area' },
  sources: [{ key: 'web-mixing-examples', locator: 'two coats of 50 and 30 sq ft per gallon' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [],
});
