import { atMost, below, finite, formula, nonNegative, positive, refuse } from '../../formula/index.js';
import type { GaugePressure, Length, Modulus, Strain, Stress } from '../../quantity/index.js';

export interface ThicknessYieldedLiveInput {
  readonly pressure: GaugePressure;
  readonly livePressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly yieldStrength: Stress;
  readonly remainingWall: Length;
  readonly substrateModulus: Modulus;
  readonly hoopModulus: Modulus;
  readonly allowableStrain: Strain;
}

/**
 * Laminate thickness in the hoop direction when the pipe may yield, with the credit that the standards give for pressure
 * during application. Less conservative than `thicknessYieldedHoop`; only for a design that asks for it.
 *
 * $$\varepsilon_c = \frac{P D}{2 E_c t} - \frac{s t_s}{E_c t} - \frac{P_l D}{2 (E_c t + E_s t_s)}$$
 *
 * solved for its one positive root, $t = \tfrac12 (b + \sqrt{b^2 + 4 t_0 t_e})$ with $b = t_0 - t_l - t_e$.
 *
 * @param input.pressure          P, design pressure [Pa], >= 0
 * @param input.livePressure      P_l, pressure in the pipe while the laminate cures [Pa], >= 0 and <= P
 * @param input.outsideDiameter   D [m], > 0
 * @param input.yieldStrength     s, specified least yield strength of the pipe [Pa], > 0
 * @param input.remainingWall     t_s, least wall at the end of life [m], > 0 and < D/2
 * @param input.substrateModulus  E_s [Pa], > 0
 * @param input.hoopModulus       E_c, of the laminate [Pa], > 0
 * @param input.allowableStrain   eps_c, in the hoop direction, > 0
 * @returns laminate thickness [m]; 0 where the pipe holds the pressure alone
 * @throws CalculationError `invalid-input`; `outside-validity` for a live pressure over what the remaining wall holds at yield,
 *   2 s t_s/D: beyond it the credit is of a wall that is not there, and a thinner wall would thin the laminate
 * @remarks An elastic-plastic pipe that yields gives the laminate more strain than this allows, by a third for a live
 *   pressure of half the design pressure; `strainYieldedHoop` tells how much.
 * @see ASME PCC-2, Eq. 4, as recalled
 */
export function thicknessYieldedLive(input: ThicknessYieldedLiveInput): Length {
  const { pressure: P, livePressure: Pl, outsideDiameter: D, yieldStrength: s, remainingWall: ts } = input;
  const { substrateModulus: Es, hoopModulus: Ec, allowableStrain: eps } = input;
  nonNegative(P, 'pressure', 'Pa');
  nonNegative(Pl, 'livePressure', 'Pa');
  atMost(Pl, P, 'the design pressure', 'livePressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  positive(s, 'yieldStrength', 'Pa');
  positive(ts, 'remainingWall', 'm');
  below(ts, D / 2, 'half the outside diameter', 'remainingWall', 'm');
  positive(Es, 'substrateModulus', 'Pa');
  positive(Ec, 'hoopModulus', 'Pa');
  positive(eps, 'allowableStrain', '');
  const [whole, pipe] = [(P * D) / 2, s * ts];
  if (whole <= pipe) return 0 as Length;
  if ((Pl * D) / 2 > pipe) beyondYield(Pl, (2 * pipe) / D);
  const t0 = (whole - pipe) / (eps * Ec);
  const te = (Es * ts) / Ec;
  const b = t0 - (Pl * D) / (2 * eps * Ec) - te;
  const root = Math.sqrt(b * b + 4 * t0 * te);
  // Where b is negative, b + root would cancel.
  const t = b >= 0 ? (b + root) / 2 : (2 * t0 * te) / (root - b);
  finite(t, 'laminate thickness', 'm');
  return t as Length;
}

/** Whether the thickness takes credit for pressure during application. */
export function thicknessYieldedLiveCreditsPressure(input: ThicknessYieldedLiveInput): boolean {
  return input.livePressure > 0;
}

function beyondYield(livePressure: number, held: number): never {
  refuse({
    code: 'outside-validity',
    parameter: 'livePressure',
    value: livePressure,
    unit: 'Pa',
    constraint: 'must be at most what the remaining wall holds at yield, {limit}; take no credit above that',
    limit: held,
  });
}

export const thicknessYieldedLiveFormula = /* @__PURE__ */ formula<ThicknessYieldedLiveInput, Length>({
  id: 'laminate/thickness-yielded-live',
  title: 'Thickness, pipe may yield, with credit for pressure during application',
  compute: thicknessYieldedLive,
  equation: {
    where: [
      { symbol: 't_0', kind: 'length', expression: '(P * D / 2 - s * t_s) / (eps_c * E_c)' },
      { symbol: 't_l', kind: 'length', expression: 'P_l * D / (2 * eps_c * E_c)' },
      { symbol: 't_e', kind: 'length', expression: 'E_s * t_s / E_c' },
      { symbol: 'b', kind: 'length', expression: 't_0 - t_l - t_e' },
    ],
    branches: [
      { when: 'P * D / 2 <= s * t_s', expression: '0 * D' },
      { when: 'b >= 0 * D', expression: '(b + sqrt(b^2 + 4 * t_0 * t_e)) / 2' },
      { expression: '2 * t_0 * t_e / (sqrt(b^2 + 4 * t_0 * t_e) - b)' },
    ],
  },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'design pressure', sample: [5e6, 30e6] },
    livePressure: { symbol: 'P_l', kind: 'gauge pressure', name: 'pressure during application', sample: [0, 10e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.05, 1.2] },
    yieldStrength: { symbol: 's', kind: 'stress', name: 'yield strength of the pipe', sample: [2e8, 5.5e8] },
    remainingWall: { symbol: 't_s', kind: 'length', name: 'remaining wall at the end of life', sample: [0.001, 0.02] },
    substrateModulus: { symbol: 'E_s', kind: 'modulus', name: 'modulus of the pipe', sample: [65e9, 210e9] },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [8e9, 80e9] },
    allowableStrain: { symbol: 'eps_c', kind: 'strain', name: 'allowable hoop strain', sample: [0.0005, 0.004] },
  },
  output: { symbol: 't', kind: 'length', name: 'laminate thickness' },
  sources: [{ key: 'asme-pcc-2', locator: '401-3.4, Eq. 4, as recalled' }],
  evidence: { form: { tag: 'recalled', derived: 'bisection of the strain equation' } },
  limits: [
    { sort: 'stop', text: 'no credit for a live pressure over what the remaining wall holds at yield, 2 s t_s/D' },
    {
      sort: 'note',
      text: 'credit for pressure during application: a pipe that yields strains the laminate more than this form allows',
      beyond: thicknessYieldedLiveCreditsPressure,
    },
  ],
});
