import { below, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';

export interface LongitudinalStressInput {
  readonly pressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
}

/**
 * Longitudinal stress of internal pressure in a pipe with closed ends: the thrust on the bore over the metal area.
 *
 *$$\sigma_l = \frac{P d_i^2}{D^2 - d_i^2} = \frac{P (D - 2 t)^2}{4 t (D - t)}$$
 *
 * @param input.pressure         P, internal gauge pressure [Pa], >= 0
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t [m], > 0 and < D/2
 * @returns longitudinal stress [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks Exact for any wall thickness. Programs use this or P D/(4 t): say which.
 * @see force balance on an end cap
 */
export function longitudinalStress(input: LongitudinalStressInput): Stress {
  const { pressure: P, outsideDiameter: D, wallThickness: t } = input;
  nonNegative(P, 'pressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  below(t, D / 2, 'half the outside diameter', 'wallThickness', 'm');
  const d = D - 2 * t;
  const stress = (P * d * d) / (4 * t * (D - t));
  finite(stress, 'longitudinal stress', 'Pa');
  return stress as Stress;
}

export const longitudinalStressFormula = /* @__PURE__ */ formula<LongitudinalStressInput, Stress>({
  id: 'pipe/longitudinal-stress',
  title: 'Longitudinal stress of pressure, exact',
  search: ['axial stress', 'end cap', 'closed ends'],
  compute: longitudinalStress,
  equation: {
    where: [{ symbol: 'd_i', kind: 'length', expression: 'D - 2 * t' }],
    expression: 'P * d_i^2 / (4 * t * (D - t))',
  },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'internal pressure', sample: [0, 30e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.001, 0.04] },
  },
  output: { symbol: 'sigma_l', kind: 'stress', name: 'longitudinal stress' },
  sources: [{ key: 'mechanics-notes', locator: 'pipe stress, longitudinal pressure stress' }],
  evidence: { form: { tag: 'secondary', derived: 'force balance on an end cap' } },
  limits: [],
});
