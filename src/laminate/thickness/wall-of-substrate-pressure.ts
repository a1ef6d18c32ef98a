import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';

export interface WallOfSubstratePressureInput {
  readonly substratePressure: GaugePressure;
  readonly allowableStress: Stress;
  readonly outsideDiameter: Length;
}

/**
 * Wall that, all round and all along, would hold what the damaged pipe holds: the inverse of `substratePressure`.
 *
 * $$t_s = \frac{P_s D}{2 s}$$
 *
 * @param input.substratePressure  P_s, that the damaged pipe holds alone [Pa], >= 0
 * @param input.allowableStress    s, of the pipe [Pa], > 0
 * @param input.outsideDiameter    D [m], > 0
 * @returns wall [m]
 * @throws CalculationError `invalid-input`
 */
export function wallOfSubstratePressure(input: WallOfSubstratePressureInput): Length {
  const { substratePressure: Ps, allowableStress: s, outsideDiameter: D } = input;
  nonNegative(Ps, 'substratePressure', 'Pa');
  positive(s, 'allowableStress', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  const wall = (Ps * D) / (2 * s);
  finite(wall, 'wall', 'm');
  return wall as Length;
}

export const wallOfSubstratePressureFormula = /* @__PURE__ */ formula<WallOfSubstratePressureInput, Length>({
  id: 'laminate/wall-of-substrate-pressure',
  title: 'Wall that stands for the damaged pipe',
  compute: wallOfSubstratePressure,
  equation: { expression: 'P_s * D / (2 * s)' },
  inputs: {
    substratePressure: {
      symbol: 'P_s',
      kind: 'gauge pressure',
      name: 'pressure that the pipe holds alone',
      sample: [0, 10e6],
    },
    allowableStress: { symbol: 's', kind: 'stress', name: 'allowable stress of the pipe', sample: [8e7, 4e8] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
  },
  output: { symbol: 't_s', kind: 'length', name: 'wall that stands for the pipe' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'force balance over a cut along the pipe' } },
  limits: [],
});
