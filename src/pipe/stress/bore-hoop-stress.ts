import { below, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';

export interface BoreHoopStressInput {
  readonly pressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
}

/**
 * Hoop stress at the bore of an elastic pipe under internal pressure (Lame): the highest in the wall.
 *
 *$$\sigma_h = P \frac{D^2 + d_i^2}{D^2 - d_i^2} = P \frac{D^2 + (D - 2 t)^2}{4 t (D - t)}$$
 *
 * @param input.pressure         P, internal gauge pressure [Pa], >= 0
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t [m], > 0 and < D/2
 * @returns hoop stress at the bore [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks Elastic, no external pressure, any wall thickness.
 * @see open lecture notes on cylinders (Lame equations)
 */
export function boreHoopStress(input: BoreHoopStressInput): Stress {
  const { pressure: P, outsideDiameter: D, wallThickness: t } = input;
  nonNegative(P, 'pressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  below(t, D / 2, 'half the outside diameter', 'wallThickness', 'm');
  const d = D - 2 * t;
  const stress = (P * (D * D + d * d)) / (4 * t * (D - t));
  finite(stress, 'hoop stress', 'Pa');
  return stress as Stress;
}

export const boreHoopStressFormula = /* @__PURE__ */ formula<BoreHoopStressInput, Stress>({
  id: 'pipe/bore-hoop-stress',
  title: 'Hoop stress at the bore of a thick-walled pipe',
  search: ['lame', 'thick wall'],
  compute: boreHoopStress,
  equation: {
    where: [{ symbol: 'd_i', kind: 'length', expression: 'D - 2 * t' }],
    expression: 'P * (D^2 + d_i^2) / (4 * t * (D - t))',
  },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'internal pressure', sample: [0, 30e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.001, 0.04] },
  },
  output: { symbol: 'sigma_b', kind: 'stress', name: 'hoop stress at the bore' },
  sources: [{ key: 'mechanics-notes', locator: 'Lame equations' }],
  evidence: { form: { tag: 'secondary', derived: 'finite-difference solution of radial equilibrium' } },
  limits: [],
});
