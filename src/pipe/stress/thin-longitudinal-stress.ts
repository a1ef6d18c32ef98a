import { below, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';

export interface ThinLongitudinalStressInput {
  readonly pressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
}

/**
 * Longitudinal stress of internal pressure in a pipe with closed ends, on the outside diameter.
 *
 *$$\sigma_l = \frac{P D}{4 t}$$
 *
 * @param input.pressure         P, internal gauge pressure [Pa], >= 0
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t [m], > 0 and < D/2
 * @returns longitudinal stress [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks Half the hoop stress on the outside diameter: the form of the pipeline codes for a line that is not restrained.
 *   Never below the exact value, `longitudinalStress`.
 * @see ASME B31.8, 833.3
 */
export function thinLongitudinalStress(input: ThinLongitudinalStressInput): Stress {
  const { pressure: P, outsideDiameter: D, wallThickness: t } = input;
  nonNegative(P, 'pressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  below(t, D / 2, 'half the outside diameter', 'wallThickness', 'm');
  const stress = (P * D) / (4 * t);
  finite(stress, 'longitudinal stress', 'Pa');
  return stress as Stress;
}

export const thinLongitudinalStressFormula = /* @__PURE__ */ formula<ThinLongitudinalStressInput, Stress>({
  id: 'pipe/thin-longitudinal-stress',
  title: 'Longitudinal stress of pressure, outside-diameter form',
  search: ['axial stress', 'end cap'],
  compute: thinLongitudinalStress,
  equation: { expression: 'P * D / (4 * t)' },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'internal pressure', sample: [0, 30e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.001, 0.04] },
  },
  output: { symbol: 'sigma_l', kind: 'stress', name: 'longitudinal stress' },
  sources: [
    { key: 'mechanics-notes', locator: 'pipe stress, longitudinal pressure stress' },
    { key: 'asme-b31-8', locator: '833.3' },
  ],
  evidence: {
    form: {
      tag: 'secondary',
      derived: 'upper bound of the force balance on an end cap',
      note: 'its use in B31.8 is recalled',
    },
  },
  limits: [],
});
