import { below, finite, formula, nonNegative, positive, within } from '../../formula/index.js';
import type { Force, GaugePressure, Length, Stress } from '../../quantity/index.js';

export interface StressUnderSoilInput {
  readonly pressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly ringMoment: Force;
  readonly factor: number;
}

/**
 * Greatest hoop stress in a pipe with pressure inside whose ring is bent by soil, with a factor on both.
 *
 * $$\sigma = f \left(\frac{P D}{2 t} + \frac{6 m}{t^2}\right)$$
 *
 * @param input.pressure         P, inside [Pa], >= 0
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t, the least one, taken all round and along [m], > 0 and < D/2
 * @param input.ringMoment       m, bending moment of the ring for each length along the pipe [N], >= 0
 * @param input.factor           f, 1 to 100
 * @returns stress to be held against the yield strength [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks First yield at the surface of an elastic ring; a full hinge needs half as much moment again. That the pressure
 *   inside rounds the ring again is not counted, since it comes and goes.
 * @see own derivation: membrane stress N / t and bending stress 6 m / t^2
 */
export function stressUnderSoil(input: StressUnderSoilInput): Stress {
  const { pressure: P, outsideDiameter: D, wallThickness: t, ringMoment: m, factor: f } = input;
  nonNegative(P, 'pressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  below(t, D / 2, 'half the outside diameter', 'wallThickness', 'm');
  nonNegative(m, 'ringMoment', 'N');
  within(f, 1, 100, 'factor', '');
  const stress = f * ((P * D) / (2 * t) + (6 * m) / (t * t));
  finite(stress, 'stress', 'Pa');
  return stress as Stress;
}

export const stressUnderSoilFormula = /* @__PURE__ */ formula<StressUnderSoilInput, Stress>({
  id: 'pipe/stress-under-soil',
  title: 'Hoop stress beside ring bending under soil',
  search: ['buried', 'ovality', 'traffic', 'road crossing'],
  compute: stressUnderSoil,
  equation: { expression: 'f * (P * D / (2 * t) + 6 * m / t^2)' },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'pressure inside', sample: [0, 1e7] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.06, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'least wall', sample: [0.002, 0.025] },
    ringMoment: { symbol: 'm', kind: 'force', name: 'bending moment of the ring for each length', sample: [0, 5e3] },
    factor: { symbol: 'f', kind: 'number', name: 'factor on the stress', sample: [1, 3] },
  },
  output: { symbol: 'sigma', kind: 'stress', name: 'stress, with its factor' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'membrane and bending stress of a thin ring' } },
  limits: [],
});
