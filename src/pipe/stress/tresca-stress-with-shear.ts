import { finite, formula, nonNegative } from '../../formula/index.js';
import type { Stress } from '../../quantity/index.js';

export interface TrescaStressWithShearInput {
  readonly hoopStress: Stress;
  readonly longitudinalStress: Stress;
  readonly shearStress: Stress;
}

/**
 * Tresca stress of a pipe wall: twice the greatest shear in its plane or across it.
 *
 * $$\sigma_T = \max\left(2 R,\ |C| + R\right), \quad C = \frac{S_H + S_L}{2}, \quad
 *   R = \sqrt{\left(\frac{S_H - S_L}{2}\right)^2 + \tau^2}$$
 *
 * @param input.hoopStress          S_H [Pa], tension positive
 * @param input.longitudinalStress  S_L [Pa], tension positive
 * @param input.shearStress         tau, size of the shear stress in the plane [Pa], >= 0
 * @returns combined stress [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks The stress through the wall is taken as zero. With C beyond R the greatest shear lies across the wall.
 * @see common practice: principal stresses of a plane state
 */
export function trescaStressWithShear(input: TrescaStressWithShearInput): Stress {
  const { hoopStress: SH, longitudinalStress: SL, shearStress: tau } = input;
  finite(SH, 'hoopStress', 'Pa');
  finite(SL, 'longitudinalStress', 'Pa');
  nonNegative(tau, 'shearStress', 'Pa');
  const half = (SH - SL) / 2;
  const R = Math.sqrt(half * half + tau * tau);
  const stress = Math.max(2 * R, Math.abs((SH + SL) / 2) + R);
  finite(stress, 'combined stress', 'Pa');
  return stress as Stress;
}

export const trescaStressWithShearFormula = /* @__PURE__ */ formula<TrescaStressWithShearInput, Stress>({
  id: 'pipe/tresca-stress-with-shear',
  title: 'Combined stress in the pipe wall with shear',
  search: ['maximum shear stress', 'equivalent stress', 'torsion'],
  compute: trescaStressWithShear,
  equation: {
    where: [
      { symbol: 'C', kind: 'stress', expression: '(S_H + S_L) / 2' },
      { symbol: 'R', kind: 'stress', expression: 'sqrt(((S_H - S_L) / 2)^2 + tau^2)' },
    ],
    expression: 'max(2 * R, abs(C) + R)',
  },
  inputs: {
    hoopStress: { symbol: 'S_H', kind: 'stress', name: 'hoop stress', sample: [0, 450e6] },
    longitudinalStress: { symbol: 'S_L', kind: 'stress', name: 'longitudinal stress', sample: [-300e6, 400e6] },
    shearStress: { symbol: 'tau', kind: 'stress', name: 'shear stress', sample: [0, 100e6] },
  },
  output: { symbol: 'sigma_T', kind: 'stress', name: 'combined stress' },
  sources: [],
  evidence: { form: { tag: 'practice', derived: 'differences of the principal stresses' } },
  limits: [],
});
