import { atLeast, atMost, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';

export interface SubstratePressureSharedInput {
  readonly substratePressure: GaugePressure;
  readonly allowableStress: Stress;
  readonly pipeStress: Stress;
  readonly outsideDiameter: Length;
  readonly wrappedDiameter: Length;
}

/**
 * What the damaged pipe carries, at the stress it comes to, of the pressure that acts on the circle under the laminate.
 *
 * $$P_{su} = P_s \frac{s_h}{s} \frac{D}{D_w}$$
 *
 * @param input.substratePressure  P_s, that the damaged pipe holds alone at its allowable stress [Pa], >= 0
 * @param input.allowableStress    s, of the pipe [Pa], > 0
 * @param input.pipeStress         s_h, that the pipe comes to under the laminate [Pa], > 0 and <= s
 * @param input.outsideDiameter    D, of the pipe [m], > 0
 * @param input.wrappedDiameter    D_w, over the filler [m], >= D
 * @returns pressure [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks The wall carries P_s D/2 of a cut along the pipe, whatever lies on it; under filler the cut is D_w wide.
 */
export function substratePressureShared(input: SubstratePressureSharedInput): GaugePressure {
  const { substratePressure: Ps, allowableStress: s, pipeStress: sh, outsideDiameter: D, wrappedDiameter: Dw } = input;
  nonNegative(Ps, 'substratePressure', 'Pa');
  positive(s, 'allowableStress', 'Pa');
  positive(sh, 'pipeStress', 'Pa');
  atMost(sh, s, 'the allowable stress', 'pipeStress', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  atLeast(Dw, D, 'the outside diameter', 'wrappedDiameter', 'm');
  const pressure = Ps * (sh / s) * (D / Dw);
  finite(pressure, 'pressure', 'Pa');
  return pressure as GaugePressure;
}

export const substratePressureSharedFormula = /* @__PURE__ */ formula<SubstratePressureSharedInput, GaugePressure>({
  id: 'laminate/substrate-pressure-shared',
  title: 'Pressure that the pipe carries under the laminate',
  compute: substratePressureShared,
  equation: { expression: 'P_s * (s_h / s) * (D / D_w)' },
  inputs: {
    substratePressure: {
      symbol: 'P_s',
      kind: 'gauge pressure',
      name: 'pressure that the pipe holds alone',
      sample: [0, 10e6],
    },
    allowableStress: { symbol: 's', kind: 'stress', name: 'allowable stress of the pipe', sample: [2e8, 4e8] },
    pipeStress: { symbol: 's_h', kind: 'stress', name: 'stress that the pipe comes to', sample: [8e7, 2e8] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 0.6] },
    wrappedDiameter: { symbol: 'D_w', kind: 'length', name: 'diameter over the filler', sample: [0.6, 1.2] },
  },
  output: { symbol: 'P_su', kind: 'gauge pressure', name: 'pressure carried by the pipe' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'force balance over a cut along the pipe' } },
  limits: [],
});
