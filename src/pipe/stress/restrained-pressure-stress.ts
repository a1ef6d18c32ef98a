import { formula, nonNegative, within } from '../../formula/index.js';
import type { Stress } from '../../quantity/index.js';

export interface RestrainedPressureStressInput {
  readonly hoopStress: Stress;
  readonly poissonRatio?: number | undefined;
}

/**
 * Longitudinal stress of internal pressure in a line that cannot move along its axis.
 *
 *$$S_P = \nu S_H$$
 *
 * @param input.hoopStress    S_H [Pa], >= 0
 * @param input.poissonRatio  nu, from 0 to 0.5; 0.3 when left out
 * @returns longitudinal stress [Pa], tension positive
 * @throws CalculationError `invalid-input`
 * @remarks Soil or anchors hold the line. The radial stress is neglected.
 * @see ASME B31.8, 833.3
 */
export function restrainedPressureStress(input: RestrainedPressureStressInput): Stress {
  const { hoopStress: S, poissonRatio: nu = 0.3 } = input;
  nonNegative(S, 'hoopStress', 'Pa');
  within(nu, 0, 0.5, 'poissonRatio', '');
  return (nu * S) as Stress;
}

export const restrainedPressureStressFormula = /* @__PURE__ */ formula<RestrainedPressureStressInput, Stress>({
  id: 'pipe/restrained-pressure-stress',
  title: 'Longitudinal stress of pressure in a restrained line',
  search: ['buried line', 'axial stress'],
  compute: restrainedPressureStress,
  equation: { expression: 'nu * S_H' },
  inputs: {
    hoopStress: { symbol: 'S_H', kind: 'stress', name: 'hoop stress', sample: [0, 450e6] },
    poissonRatio: { symbol: 'nu', kind: 'number', name: "Poisson's ratio", sample: [0.2, 0.4], default: 0.3 },
  },
  output: { symbol: 'S_P', kind: 'stress', name: 'longitudinal stress of pressure' },
  sources: [{ key: 'asme-b31-8', locator: '833.3' }],
  evidence: {
    form: { tag: 'secondary', derived: 'plane strain of a thin cylinder' },
    poissonRatio: { tag: 'secondary', note: '0.3 S_H, reproduced by a published sheet' },
  },
  limits: [],
});
