import { atMost, below, finite, formula, nonNegative, positive, refuse } from '../../formula/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';

export interface ThicknessLongTermInput {
  readonly pressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly longTermStrength: Stress;
  readonly performanceFactor: number;
  readonly yieldStrength?: Stress;
  readonly remainingWall?: Length;
}

/**
 * Laminate thickness in the hoop direction from a long-term strength that was measured on the system itself.
 *
 * $$t = \frac{P D/2 - s t_s}{f\, s_{lt}}$$
 *
 * @param input.pressure           P, design pressure [Pa], >= 0
 * @param input.outsideDiameter    D [m], > 0
 * @param input.longTermStrength   s_lt, lower confidence limit of the long-term strength of the laminate [Pa], > 0
 * @param input.performanceFactor  f_perf, above 0, at most 1
 * @param input.yieldStrength      s, yield strength of the pipe [Pa]; without it the pipe counts for nothing
 * @param input.remainingWall      t_s, least wall at the end of life [m], < D/2; without it the pipe counts for nothing
 * @returns laminate thickness [m]; 0 where the pipe holds the pressure alone
 * @throws CalculationError `invalid-input`, also when only one of the two pipe values is given
 * @remarks s_lt is a stress of the laminate, so its modulus does not enter.
 * @see ISO 24817:2017, 7.5.6; ASME PCC-2, Eq. 11, as recalled
 */
export function thicknessLongTerm(input: ThicknessLongTermInput): Length {
  const { pressure: P, outsideDiameter: D, longTermStrength: slt, performanceFactor: f } = input;
  const { yieldStrength: s = 0, remainingWall: ts = 0 } = input;
  nonNegative(P, 'pressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  positive(slt, 'longTermStrength', 'Pa');
  positive(f, 'performanceFactor', '');
  nonNegative(s, 'yieldStrength', 'Pa');
  nonNegative(ts, 'remainingWall', 'm');
  below(ts, D / 2, 'half the outside diameter', 'remainingWall', 'm');
  atMost(f, 1, 'the whole strength', 'performanceFactor', '');
  if ((input.yieldStrength === undefined) !== (input.remainingWall === undefined)) {
    refuse({
      code: 'invalid-input',
      parameter: input.yieldStrength === undefined ? 'yieldStrength' : 'remainingWall',
      value: undefined,
      unit: '',
      constraint: 'must be given as well, or neither, since the pipe counts by yield strength times remaining wall',
    });
  }
  const [whole, pipe] = [(P * D) / 2, s * ts];
  if (whole <= pipe) return 0 as Length;
  const t = (whole - pipe) / (f * slt);
  finite(t, 'laminate thickness', 'm');
  return t as Length;
}

/** Whether the remaining wall of the pipe is counted. */
export function thicknessLongTermCountsSubstrate(input: ThicknessLongTermInput): boolean {
  return (input.yieldStrength ?? 0) > 0 && (input.remainingWall ?? 0) > 0;
}

export const thicknessLongTermFormula = /* @__PURE__ */ formula<ThicknessLongTermInput, Length>({
  id: 'laminate/thickness-long-term',
  title: 'Thickness, long-term strength of the laminate',
  search: ['repair thickness', 'creep'],
  compute: thicknessLongTerm,
  equation: {
    branches: [
      { when: 'P * D / 2 <= s * t_s', expression: '0 * D' },
      { expression: '(P * D / 2 - s * t_s) / (f_perf * s_lt)' },
    ],
  },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'design pressure', sample: [0, 30e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.05, 1.2] },
    longTermStrength: {
      symbol: 's_lt',
      kind: 'stress',
      name: 'long-term strength of the laminate',
      sample: [3e7, 4e8],
    },
    performanceFactor: { symbol: 'f_perf', kind: 'number', name: 'factor on the long-term strength', sample: [0.3, 1] },
    yieldStrength: {
      symbol: 's',
      kind: 'stress',
      name: 'yield strength of the pipe, if it is counted',
      default: 0,
      sample: [2e8, 5.5e8],
    },
    remainingWall: {
      symbol: 't_s',
      kind: 'length',
      name: 'remaining wall at the end of life, if it is counted',
      default: 0,
      sample: [0, 0.02],
    },
  },
  output: { symbol: 't', kind: 'length', name: 'laminate thickness' },
  sources: [
    { key: 'iso-24817', locator: '7.5.6, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, Eq. 11, as recalled' },
  ],
  evidence: { form: { tag: 'recalled', derived: 'force balance over a cut along the pipe' } },
  limits: [
    {
      sort: 'note',
      text: 'the remaining wall of the pipe is counted at its yield strength',
      beyond: thicknessLongTermCountsSubstrate,
    },
  ],
});
