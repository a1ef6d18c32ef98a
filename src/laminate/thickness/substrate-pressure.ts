import { below, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';

export interface SubstratePressureInput {
  readonly allowableStress: Stress;
  readonly remainingWall: Length;
  readonly outsideDiameter: Length;
}

/**
 * Pressure that the pipe holds alone, as if its remaining wall were its wall all round.
 *
 * $$P_s = \frac{2 s t_s}{D}$$
 *
 * @param input.allowableStress  s, allowable stress of the pipe [Pa], > 0
 * @param input.remainingWall    t_s, least wall at the end of life [m], >= 0 and < D/2
 * @param input.outsideDiameter  D [m], > 0
 * @returns pressure held by the pipe [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks Ignores the help of the sound wall round a short defect; a defect assessment gives more. The only value of P_s
 *   with which the axial sharing form is exact.
 * @see ISO 24817:2017, 7.5.4; ASME PCC-2, Eq. 1, as recalled
 */
export function substratePressure(input: SubstratePressureInput): GaugePressure {
  const { allowableStress: s, remainingWall: ts, outsideDiameter: D } = input;
  positive(s, 'allowableStress', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  nonNegative(ts, 'remainingWall', 'm');
  below(ts, D / 2, 'half the outside diameter', 'remainingWall', 'm');
  const pressure = (2 * s * ts) / D;
  finite(pressure, 'pressure held by the pipe', 'Pa');
  return pressure as GaugePressure;
}

export const substratePressureFormula = /* @__PURE__ */ formula<SubstratePressureInput, GaugePressure>({
  id: 'laminate/substrate-pressure',
  title: 'Pressure that the remaining wall holds alone',
  search: ['remaining strength', 'maop'],
  compute: substratePressure,
  equation: { expression: '2 * s * t_s / D' },
  inputs: {
    allowableStress: { symbol: 's', kind: 'stress', name: 'allowable stress of the pipe', sample: [8e7, 4e8] },
    remainingWall: { symbol: 't_s', kind: 'length', name: 'remaining wall at the end of life', sample: [0, 0.02] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
  },
  output: { symbol: 'P_s', kind: 'gauge pressure', name: 'pressure held by the pipe' },
  sources: [
    { key: 'iso-24817', locator: '7.5.4, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, Eq. 1, as recalled' },
  ],
  evidence: { form: { tag: 'recalled', derived: 'force balance over a cut along the pipe' } },
  limits: [],
});
