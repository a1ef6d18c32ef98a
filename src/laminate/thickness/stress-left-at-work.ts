import { below, finite, formula, nonNegative, positive, refuse } from '../../formula/index.js';
import type { Force, GaugePressure, Length, Stress } from '../../quantity/index.js';

export interface StressLeftAtWorkInput {
  readonly allowableStress: Stress;
  readonly livePressure: GaugePressure;
  readonly axialForce: Force;
  readonly outsideDiameter: Length;
  readonly substrateWall: Length;
}

/**
 * What is left of the allowable stress of a pipe that is strained already while the laminate is laid on it: the larger of
 * its stresses round and along is taken off.
 *
 * $$s_l = s - \max\left(\frac{P_l D}{2 t_s},\ \frac{P_l D}{4 t_s} + \frac{\max(F, 0)}{\pi D t_s}\right)$$
 *
 * @param input.allowableStress  s, of the pipe [Pa], > 0
 * @param input.livePressure     P_l, pressure in the pipe while the laminate cures [Pa], >= 0
 * @param input.axialForce       F, along the pipe beside that of the pressure, a push below 0 [N]
 * @param input.outsideDiameter  D, of the pipe [m], > 0
 * @param input.substrateWall    t_s, wall that stands for the damaged pipe [m], > 0 and < D/2
 * @returns stress that pipe and laminate may share [Pa]
 * @throws CalculationError `invalid-input`; `no-solution` when nothing is left
 * @remarks With the whole design pressure shared within it the pipe stays below s, since what comes after P_l is less.
 */
export function stressLeftAtWork(input: StressLeftAtWorkInput): Stress {
  const { allowableStress: s, livePressure: Pl, axialForce: F, outsideDiameter: D, substrateWall: ts } = input;
  positive(s, 'allowableStress', 'Pa');
  nonNegative(Pl, 'livePressure', 'Pa');
  finite(F, 'axialForce', 'N');
  positive(D, 'outsideDiameter', 'm');
  positive(ts, 'substrateWall', 'm');
  below(ts, D / 2, 'half the outside diameter', 'substrateWall', 'm');
  const round = (Pl * D) / (2 * ts);
  const along = (Pl * D) / (4 * ts) + Math.max(F, 0) / (Math.PI * D * ts);
  const left = s - Math.max(round, along);
  finite(left, 'stress left', 'Pa');
  if (left > 0) return left as Stress;
  refuse({
    code: 'no-solution',
    parameter: 'allowableStress',
    value: s,
    unit: 'Pa',
    constraint: 'must be above {limit}, which the pipe bears already while the laminate is laid on it',
    limit: Math.max(round, along),
  });
}

export const stressLeftAtWorkFormula = /* @__PURE__ */ formula<StressLeftAtWorkInput, Stress>({
  id: 'laminate/stress-left-at-work',
  title: 'Stress left for a laminate laid on a pipe under load',
  search: ['live line', 'wrap under pressure'],
  compute: stressLeftAtWork,
  equation: {
    where: [
      { symbol: 'F_t', kind: 'force', expression: 'max(F, 0 * F)' },
      { symbol: 's_h', kind: 'stress', expression: 'P_l * D / (2 * t_s)' },
      { symbol: 's_x', kind: 'stress', expression: 'P_l * D / (4 * t_s) + F_t / (pi * D * t_s)' },
    ],
    expression: 's - max(s_h, s_x)',
  },
  inputs: {
    allowableStress: { symbol: 's', kind: 'stress', name: 'allowable stress of the pipe', sample: [150e6, 400e6] },
    livePressure: {
      symbol: 'P_l',
      kind: 'gauge pressure',
      name: 'pressure while the laminate cures',
      sample: [0, 1e6],
    },
    axialForce: { symbol: 'F', kind: 'force', name: 'force along the pipe', sample: [-1e5, 1e5] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.1, 0.6] },
    substrateWall: {
      symbol: 't_s',
      kind: 'length',
      name: 'wall that stands for the damaged pipe',
      sample: [0.004, 0.02],
    },
  },
  output: { symbol: 's_l', kind: 'stress', name: 'stress left' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'superposition; the larger of the two stresses is taken off both' } },
  limits: [],
});
