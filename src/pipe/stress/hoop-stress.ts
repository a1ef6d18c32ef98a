import { below, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';

export interface HoopStressInput {
  readonly pressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
}

/**
 * Hoop stress in a pipe under internal pressure, on the outside diameter (Barlow).
 *
 * $$\sigma_h = \frac{P D}{2 t}$$
 *
 * @param input.pressure         P, internal gauge pressure [Pa], >= 0
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t [m], > 0 and < D/2
 * @returns hoop stress [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks The form of the pipeline codes. Never below the highest stress in the wall of an elastic pipe, the bore stress
 *   of the thick cylinder, for any wall thickness.
 * @see 49 CFR 192.105 and 195.106; Pipeline Rules of Thumb Handbook, p. 106
 */
export function hoopStress(input: HoopStressInput): Stress {
  const { pressure: P, outsideDiameter: D, wallThickness: t } = input;
  nonNegative(P, 'pressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  below(t, D / 2, 'half the outside diameter', 'wallThickness', 'm');
  const stress = (P * D) / (2 * t);
  finite(stress, 'hoop stress', 'Pa');
  return stress as Stress;
}

export const hoopStressFormula = /* @__PURE__ */ formula<HoopStressInput, Stress>({
  id: 'pipe/hoop-stress',
  title: 'Hoop stress on the outside diameter',
  search: ['barlow', 'circumferential stress'],
  compute: hoopStress,
  equation: { expression: 'P * D / (2 * t)' },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'internal pressure', sample: [0, 30e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.001, 0.04] },
  },
  output: { symbol: 'sigma_h', kind: 'stress', name: 'hoop stress' },
  sources: [
    { key: 'cfr-49-192', locator: '192.105(a)' },
    { key: 'cfr-49-195', locator: '195.106(a)' },
    { key: 'rules-of-thumb', locator: 'p. 106' },
  ],
  evidence: { form: { tag: 'published', derived: 'force balance over a cut along the pipe' } },
  limits: [],
});
