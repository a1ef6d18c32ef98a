import { finite, formula } from '../../formula/index.js';
import type { Stress } from '../../quantity/index.js';

export interface CombinedVonMisesStressInput {
  readonly hoopStress: Stress;
  readonly longitudinalStress: Stress;
  readonly torsionStress?: Stress | undefined;
}

/**
 * Von Mises stress of hoop stress, longitudinal stress and torsion in the wall of a thin pipe.
 *
 *$$\sigma_{vM} = \sqrt{S_H^2 - S_H S_L + S_L^2 + 3 S_t^2}$$
 *
 * @param input.hoopStress          S_H [Pa], tension positive
 * @param input.longitudinalStress  S_L [Pa], tension positive
 * @param input.torsionStress       S_t [Pa]; 0 when left out
 * @returns combined stress [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks Plane stress: the radial stress is neglected. B31.4 allows 0.9 of the specified minimum yield strength in a
 *   restrained line.
 * @see ASME B31.4, 402.7
 */
export function combinedVonMisesStress(input: CombinedVonMisesStressInput): Stress {
  const { hoopStress: SH, longitudinalStress: SL, torsionStress: St = 0 } = input;
  finite(SH, 'hoopStress', 'Pa');
  finite(SL, 'longitudinalStress', 'Pa');
  finite(St, 'torsionStress', 'Pa');
  const stress = Math.sqrt(SH * SH - SH * SL + SL * SL + 3 * St * St);
  finite(stress, 'combined stress', 'Pa');
  return stress as Stress;
}

export const combinedVonMisesStressFormula = /* @__PURE__ */ formula<CombinedVonMisesStressInput, Stress>({
  id: 'pipe/combined-von-mises-stress',
  title: 'Combined stress in the pipe wall, von Mises',
  search: ['equivalent stress', 'effective stress'],
  compute: combinedVonMisesStress,
  equation: { expression: 'sqrt(S_H^2 - S_H * S_L + S_L^2 + 3 * S_t^2)' },
  inputs: {
    hoopStress: { symbol: 'S_H', kind: 'stress', name: 'hoop stress', sample: [0, 450e6] },
    longitudinalStress: { symbol: 'S_L', kind: 'stress', name: 'longitudinal stress', sample: [-300e6, 400e6] },
    torsionStress: {
      symbol: 'S_t',
      kind: 'stress',
      name: 'shear stress of torsion',
      sample: [-100e6, 100e6],
      default: 0,
    },
  },
  output: { symbol: 'sigma_vM', kind: 'stress', name: 'combined stress' },
  sources: [{ key: 'asme-b31-4', locator: '402.7' }],
  evidence: { form: { tag: 'secondary', derived: 'von Mises stress of the principal stresses of the plane state' } },
  limits: [],
});
