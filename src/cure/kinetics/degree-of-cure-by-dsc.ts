import { atMost, formula, nonNegative, positive } from '../../formula/index.js';
import type { Ratio, SpecificEnergy } from '../../quantity/index.js';

export interface DegreeOfCureByDscInput {
  readonly totalHeat: SpecificEnergy;
  readonly residualHeat: SpecificEnergy;
}

/**
 * Degree of cure from the heat that a sample still gives off in the calorimeter.
 *
 * $$a = 1 - \frac{\Delta H_{res}}{\Delta H_{tot}}$$
 *
 * @param input.totalHeat    dH_tot, heat of the fresh mix [J/kg], > 0
 * @param input.residualHeat dH_res, heat left in the sample [J/kg], from 0 to dH_tot
 * @returns degree of cure
 * @throws CalculationError `invalid-input`
 * @remarks Both per kilogram of resin: a filled or fibre-bearing sample is corrected for its resin content first.
 * @see thermal analysis note TA389
 */
export function degreeOfCureByDsc(input: DegreeOfCureByDscInput): Ratio {
  const { totalHeat, residualHeat } = input;
  positive(totalHeat, 'totalHeat', 'J/kg');
  nonNegative(residualHeat, 'residualHeat', 'J/kg');
  atMost(residualHeat, totalHeat, 'the heat of the fresh mix', 'residualHeat', 'J/kg');
  return ((totalHeat - residualHeat) / totalHeat) as Ratio;
}

export const degreeOfCureByDscFormula = /* @__PURE__ */ formula<DegreeOfCureByDscInput, Ratio>({
  id: 'cure/degree-of-cure-by-dsc',
  title: 'Degree of cure from the residual exotherm',
  search: ['under-cured', 'calorimetry'],
  compute: degreeOfCureByDsc,
  equation: { expression: '1 - dH_res / dH_tot' },
  inputs: {
    totalHeat: { symbol: 'dH_tot', kind: 'specific energy', name: 'heat of the fresh mix', sample: [2e5, 6e5] },
    residualHeat: { symbol: 'dH_res', kind: 'specific energy', name: 'heat left', sample: [0, 2e5] },
  },
  output: { symbol: 'a', kind: 'ratio', name: 'degree of cure' },
  sources: [{ key: 'dsc-residual-cure-note', locator: 'worked example' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [],
});
