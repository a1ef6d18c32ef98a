import { finite, formula } from '../../formula/index.js';
import type { Stress } from '../../quantity/index.js';

export interface CombinedTrescaStressInput {
  readonly hoopStress: Stress;
  readonly longitudinalStress: Stress;
  readonly torsionStress?: Stress | undefined;
}

/**
 * Tresca stress of hoop stress, longitudinal stress and torsion, taken in the plane of the wall.
 *
 *$$\sigma_T = 2 \sqrt{\left( \frac{S_L - S_H}{2} \right)^2 + S_t^2}$$
 *
 * @param input.hoopStress          S_H [Pa], tension positive
 * @param input.longitudinalStress  S_L [Pa], tension positive
 * @param input.torsionStress       S_t [Pa]; 0 when left out
 * @returns combined stress [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks The form of B31.4, which allows 0.9 of the specified minimum yield strength in a restrained line. Where both
 *   principal stresses have one sign the greatest shear lies across the wall and this form is too low: use `trescaStress`.
 * @see ASME B31.4, 402.7
 */
export function combinedTrescaStress(input: CombinedTrescaStressInput): Stress {
  const { hoopStress: SH, longitudinalStress: SL, torsionStress: St = 0 } = input;
  finite(SH, 'hoopStress', 'Pa');
  finite(SL, 'longitudinalStress', 'Pa');
  finite(St, 'torsionStress', 'Pa');
  const half = (SL - SH) / 2;
  const stress = 2 * Math.sqrt(half * half + St * St);
  finite(stress, 'combined stress', 'Pa');
  return stress as Stress;
}

/** Whether both principal stresses of the plane have one sign, so that the greatest shear lies across the wall: S_H S_L > S_t^2. */
export function combinedTrescaStressBeyondPlane(input: CombinedTrescaStressInput): boolean {
  const { hoopStress: SH, longitudinalStress: SL, torsionStress: St = 0 } = input;
  return SH * SL > St * St;
}

export const combinedTrescaStressFormula = /* @__PURE__ */ formula<CombinedTrescaStressInput, Stress>({
  id: 'pipe/combined-tresca-stress',
  title: 'Combined stress in the pipe wall, Tresca in the plane',
  search: ['equivalent stress', 'shear stress theory'],
  compute: combinedTrescaStress,
  equation: { expression: '2 * sqrt(((S_L - S_H) / 2)^2 + S_t^2)' },
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
  output: { symbol: 'sigma_T', kind: 'stress', name: 'combined stress' },
  sources: [{ key: 'asme-b31-4', locator: '402.7' }],
  evidence: { form: { tag: 'secondary', derived: 'difference of the principal stresses of the plane state' } },
  limits: [
    {
      sort: 'note',
      text: 'too low where both principal stresses of the plane have one sign: the greatest shear then lies across the wall',
      beyond: combinedTrescaStressBeyondPlane,
    },
  ],
});
