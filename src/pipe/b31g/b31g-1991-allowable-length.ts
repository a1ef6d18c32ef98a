import { atMost, formula, positive } from '../../formula/index.js';
import type { GaugePressure, Length } from '../../quantity/index.js';
import { checkDepth, checkPipeWall } from '../remaining-strength/part-wall-defect.js';

export interface B31g1991AllowableLengthInput {
  readonly designPressure: GaugePressure;
  readonly operatingPressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly defectDepth: Length;
}

/**
 * Longest metal loss of a given depth that may stay at the operating pressure, by the 1991 manual: the length at which
 * its safe pressure falls to the operating pressure.
 *
 * $$L = \frac{A\sqrt{D t}}{0.893},\qquad \sqrt{A^2 + 1} = \frac{q}{1 - k(1 - q)},\qquad A \le 4,\qquad
 * q = \tfrac{2}{3}\frac{d}{t},\qquad k = \frac{1.1 P}{\mathrm{MAOP}}$$
 *
 * The length is `unlimited` where even an endless loss passes, k (1 - d/t) >= 1.
 *
 * @param input.designPressure     P, of `b31g1991DesignPressure` [Pa], > 0
 * @param input.operatingPressure  MAOP [Pa], > 0 and at most P
 * @param input.outsideDiameter    D [m], > 0
 * @param input.wallThickness      t [m], > 0 and < D/2
 * @param input.defectDepth        d, deepest point [m], >= 0 and at most 0.8 t
 * @returns allowable length [m], or `unlimited`
 * @throws CalculationError `invalid-input`; `outside-validity` for a depth over 0.8 of the wall
 * @remarks The manual's program goes back from a length factor cut to three decimals with 1.12 in place of 1/0.893, which
 *   is 0.02 per cent longer; this form returns to the same safe pressure.
 * @see ASME B31G-1991, Part 4
 */
export function b31g1991AllowableLength(input: B31g1991AllowableLengthInput): Length | 'unlimited' {
  const { designPressure: P, operatingPressure: MAOP, outsideDiameter: D, wallThickness: t, defectDepth: d } = input;
  positive(P, 'designPressure', 'Pa');
  positive(MAOP, 'operatingPressure', 'Pa');
  atMost(MAOP, P, 'the pressure of the sound pipe', 'operatingPressure', 'Pa');
  checkPipeWall(D, t);
  checkDepth(d, t, 0.8, 'defectDepth', 'ASME B31G-1991');
  const k = 1.1 * (P / MAOP);
  if (k * (1 - d / t) >= 1) return 'unlimited';
  const q = ((2 / 3) * d) / t;
  const rest = 1 - k * (1 - q);
  const M = rest > 0 ? q / rest : Number.POSITIVE_INFINITY;
  const A = Math.min(Math.sqrt((M - 1) * (M + 1)), 4);
  return ((A * (Math.sqrt(D) * Math.sqrt(t))) / 0.893) as Length;
}

export const b31g1991AllowableLengthFormula = /* @__PURE__ */ formula<
  B31g1991AllowableLengthInput,
  Length | 'unlimited'
>({
  id: 'pipe/b31g-1991-allowable-length',
  title: 'Allowable length of B31G-1991',
  search: ['corrosion', 'metal loss', 'pit length'],
  compute: b31g1991AllowableLength,
  equation: {
    algorithm:
      'unlimited if 1.1 P (1 - d/t) is at least MAOP; else L = A sqrt(D t)/0.893 with A from P_safe(A) = MAOP, at most 4',
  },
  inputs: {
    designPressure: { symbol: 'P', kind: 'gauge pressure', name: 'pressure of the sound pipe', sample: [4e6, 15e6] },
    operatingPressure: {
      symbol: 'MAOP',
      kind: 'gauge pressure',
      name: 'maximum operating pressure',
      sample: [2e6, 12e6],
    },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.1, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.005, 0.03] },
    defectDepth: { symbol: 'd', kind: 'length', name: 'depth of the defect', sample: [0.0005, 0.015] },
  },
  output: { symbol: 'L_max', kind: 'length', name: 'allowable length' },
  sources: [{ key: 'asme-b31g-1991', locator: 'Part 4, solved for the length' }],
  evidence: { form: { tag: 'secondary', derived: 'safe pressure searched over the length' } },
  limits: [
    {
      sort: 'stop',
      text: 'Depth over 0.8 of the wall: repair or replace.',
      source: { key: 'asme-b31g-1991', locator: 'Part 4' },
    },
  ],
});
