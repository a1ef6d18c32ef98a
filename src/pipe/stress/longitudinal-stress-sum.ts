import { finite, formula } from '../../formula/index.js';
import type { Stress } from '../../quantity/index.js';

export interface LongitudinalStressSumInput {
  readonly pressureStress: Stress;
  readonly thermalStress?: Stress | undefined;
  readonly axialForceStress?: Stress | undefined;
  readonly bendingStress?: Stress | undefined;
}

/**
 * Sum of the longitudinal stresses of pressure, temperature, axial force and bending.
 *
 *$$S_L = S_P + S_T + S_X + S_B$$
 *
 * @param input.pressureStress    S_P [Pa], tension positive
 * @param input.thermalStress     S_T [Pa], tension positive; 0 when left out
 * @param input.axialForceStress  S_X [Pa], tension positive; 0 when left out
 * @param input.bendingStress     S_B [Pa], with the sign of the side looked at; 0 when left out
 * @returns longitudinal stress [Pa], tension positive
 * @throws CalculationError `invalid-input`
 * @remarks Ask it with both signs of the bending stress: either side may govern.
 * @see ASME B31.8, 833
 */
export function longitudinalStressSum(input: LongitudinalStressSumInput): Stress {
  const { pressureStress: SP, thermalStress: ST = 0, axialForceStress: SX = 0, bendingStress: SB = 0 } = input;
  finite(SP, 'pressureStress', 'Pa');
  finite(ST, 'thermalStress', 'Pa');
  finite(SX, 'axialForceStress', 'Pa');
  finite(SB, 'bendingStress', 'Pa');
  const stress = SP + ST + SX + SB;
  finite(stress, 'longitudinal stress', 'Pa');
  return stress as Stress;
}

export const longitudinalStressSumFormula = /* @__PURE__ */ formula<LongitudinalStressSumInput, Stress>({
  id: 'pipe/longitudinal-stress-sum',
  title: 'Sum of the longitudinal stresses',
  search: ['axial stress', 'sustained load', 'b31.3'],
  compute: longitudinalStressSum,
  equation: { expression: 'S_P + S_T + S_X + S_B' },
  inputs: {
    pressureStress: { symbol: 'S_P', kind: 'stress', name: 'stress of pressure', sample: [-300e6, 400e6] },
    thermalStress: { symbol: 'S_T', kind: 'stress', name: 'thermal stress', sample: [-300e6, 400e6], default: 0 },
    axialForceStress: {
      symbol: 'S_X',
      kind: 'stress',
      name: 'stress of axial force',
      sample: [-300e6, 400e6],
      default: 0,
    },
    bendingStress: { symbol: 'S_B', kind: 'stress', name: 'stress of bending', sample: [-300e6, 400e6], default: 0 },
  },
  output: { symbol: 'S_L', kind: 'stress', name: 'longitudinal stress' },
  sources: [
    { key: 'restrained-line-sheet', locator: 'sum of longitudinal stresses' },
    { key: 'asme-b31-8', locator: '833' },
  ],
  evidence: { form: { tag: 'secondary', derived: 'superposition' } },
  limits: [],
});
