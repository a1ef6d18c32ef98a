import { atMost, below, finite, formula, nonNegative, positive, refuse } from '../../formula/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';

export interface PressureLongTermInput {
  readonly laminateThickness: Length;
  readonly outsideDiameter: Length;
  readonly longTermStrength: Stress;
  readonly performanceFactor: number;
  readonly yieldStrength?: Stress;
  readonly remainingWall?: Length;
}

/**
 * Pressure that a laminate holds at its factored long-term strength: the inverse of `thicknessLongTerm`.
 *
 * $$P = \frac{2}{D}\left(s t_s + f\, s_{lt} t\right)$$
 *
 * @param input.laminateThickness  t [m], >= 0
 * @param input.outsideDiameter    D [m], > 0
 * @param input.longTermStrength   s_lt, lower confidence limit of the long-term strength of the laminate [Pa], > 0
 * @param input.performanceFactor  f_perf, above 0, at most 1
 * @param input.yieldStrength      s, yield strength of the pipe [Pa]; without it the pipe counts for nothing
 * @param input.remainingWall      t_s, least wall at the end of life [m], < D/2; without it the pipe counts for nothing
 * @returns pressure [Pa]
 * @throws CalculationError `invalid-input`, also when only one of the two pipe values is given
 * @see ISO 24817:2017, 7.5.6; ASME PCC-2, Eq. 11, as recalled
 */
export function pressureLongTerm(input: PressureLongTermInput): GaugePressure {
  const { laminateThickness: t, outsideDiameter: D, longTermStrength: slt, performanceFactor: f } = input;
  const { yieldStrength: s = 0, remainingWall: ts = 0 } = input;
  nonNegative(t, 'laminateThickness', 'm');
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
  const pressure = (2 / D) * (s * ts + f * slt * t);
  finite(pressure, 'pressure', 'Pa');
  return pressure as GaugePressure;
}

export const pressureLongTermFormula = /* @__PURE__ */ formula<PressureLongTermInput, GaugePressure>({
  id: 'laminate/pressure-long-term',
  title: 'Pressure held, long-term strength of the laminate',
  search: ['creep', 'stress rupture'],
  compute: pressureLongTerm,
  equation: { expression: '2 / D * (s * t_s + f_perf * s_lt * t)' },
  inputs: {
    laminateThickness: { symbol: 't', kind: 'length', name: 'laminate thickness', sample: [0, 0.05] },
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
  output: { symbol: 'P', kind: 'gauge pressure', name: 'pressure held' },
  sources: [
    { key: 'iso-24817', locator: '7.5.6, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, Eq. 11, as recalled' },
  ],
  evidence: { form: { tag: 'recalled', derived: 'force balance over a cut along the pipe' } },
  limits: [],
});
