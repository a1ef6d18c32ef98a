import { below, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';

export interface MeanDiameterHoopStressInput {
  readonly pressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
}

/**
 * Hoop stress in a pipe under internal pressure, on the mean diameter.
 *
 *$$\sigma_h = \frac{P (D - t)}{2 t}$$
 *
 * @param input.pressure         P, internal gauge pressure [Pa], >= 0
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t [m], > 0 and < D/2
 * @returns hoop stress [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks Within 1 % of the bore stress of the thick cylinder for D/t >= 11, and below it: for thicker walls use
 *   `boreHoopStress`.
 * @see open lecture notes on cylinders
 */
export function meanDiameterHoopStress(input: MeanDiameterHoopStressInput): Stress {
  const { pressure: P, outsideDiameter: D, wallThickness: t } = input;
  nonNegative(P, 'pressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  below(t, D / 2, 'half the outside diameter', 'wallThickness', 'm');
  const stress = (P * (D - t)) / (2 * t);
  finite(stress, 'hoop stress', 'Pa');
  return stress as Stress;
}

/** Whether the wall is so thick that the mean-diameter stress falls more than 1 % below the bore stress: D/t < 11. */
export function meanDiameterHoopStressBeyondAccuracy(input: MeanDiameterHoopStressInput): boolean {
  return input.outsideDiameter < 11 * input.wallThickness;
}

export const meanDiameterHoopStressFormula = /* @__PURE__ */ formula<MeanDiameterHoopStressInput, Stress>({
  id: 'pipe/mean-diameter-hoop-stress',
  title: 'Hoop stress on the mean diameter',
  search: ['barlow'],
  compute: meanDiameterHoopStress,
  equation: { expression: 'P * (D - t) / (2 * t)' },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'internal pressure', sample: [0, 30e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.001, 0.04] },
  },
  output: { symbol: 'sigma_h', kind: 'stress', name: 'hoop stress' },
  sources: [{ key: 'mechanics-notes', locator: 'thin cylinder' }],
  evidence: { form: { tag: 'secondary', derived: 'within 1 % of the thick-cylinder bore stress for D/t >= 11' } },
  limits: [
    {
      sort: 'note',
      text: 'more than 1 % below the bore stress of the thick cylinder for D/t < 11',
      beyond: meanDiameterHoopStressBeyondAccuracy,
      source: { key: 'mechanics-notes', locator: 'thin cylinder' },
    },
  ],
});
