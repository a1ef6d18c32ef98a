import { atMost, below, finite, formula, nonNegative, positive, refuse } from '../../formula/index.js';
import type { GaugePressure, Length, Modulus, Stress } from '../../quantity/index.js';

export interface ThicknessSharingLiveInput {
  readonly pressure: GaugePressure;
  readonly livePressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly allowableStress: Stress;
  readonly remainingWall: Length;
  readonly substrateModulus: Modulus;
  readonly hoopModulus: Modulus;
}

/**
 * Laminate thickness in the hoop direction when the pipe shares the load, stays below its allowable stress, and was under
 * pressure during application.
 *
 * $$t = \frac{E_s}{E_c}\,\frac{P D/2 - s t_s}{s - P_l D/(2 t_s)}$$
 *
 * @param input.pressure          P, design pressure [Pa], >= 0
 * @param input.livePressure      P_l, pressure in the pipe while the laminate cures [Pa], >= 0 and <= P
 * @param input.outsideDiameter   D [m], > 0
 * @param input.allowableStress   s, of the pipe [Pa], > 0
 * @param input.remainingWall     t_s, least wall at the end of life [m], > 0 and < D/2
 * @param input.substrateModulus  E_s [Pa], > 0
 * @param input.hoopModulus       E_c, of the laminate [Pa], > 0
 * @returns laminate thickness [m]; 0 where the pipe holds the pressure alone
 * @throws CalculationError `invalid-input`; `no-solution` when the live pressure alone takes the pipe to its allowable stress
 * @remarks The laminate feels only the pressure that comes after it, so it is thicker than without live pressure, where
 *   the form equals `thicknessSharingHoop` with P_s = 2 s t_s/D. Own derivation; in neither standard.
 */
export function thicknessSharingLive(input: ThicknessSharingLiveInput): Length {
  const { pressure: P, livePressure: Pl, outsideDiameter: D, allowableStress: s, remainingWall: ts } = input;
  const { substrateModulus: Es, hoopModulus: Ec } = input;
  nonNegative(P, 'pressure', 'Pa');
  nonNegative(Pl, 'livePressure', 'Pa');
  atMost(Pl, P, 'the design pressure', 'livePressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  positive(s, 'allowableStress', 'Pa');
  positive(ts, 'remainingWall', 'm');
  below(ts, D / 2, 'half the outside diameter', 'remainingWall', 'm');
  positive(Es, 'substrateModulus', 'Pa');
  positive(Ec, 'hoopModulus', 'Pa');
  const [whole, pipe] = [(P * D) / 2, s * ts];
  if (whole <= pipe) return 0 as Length;
  const spare = s - (Pl * D) / (2 * ts);
  if (!(spare > 0)) {
    refuse({
      code: 'no-solution',
      parameter: 'livePressure',
      value: Pl,
      unit: 'Pa',
      constraint:
        'must be below {limit}, which takes the remaining wall to its allowable stress before any laminate can share',
      limit: (2 * s * ts) / D,
    });
  }
  const t = (Es / Ec) * ((whole - pipe) / spare);
  finite(t, 'laminate thickness', 'm');
  return t as Length;
}

export const thicknessSharingLiveFormula = /* @__PURE__ */ formula<ThicknessSharingLiveInput, Length>({
  id: 'laminate/thickness-sharing-live',
  title: 'Thickness, pipe shares the load, applied under pressure',
  search: ['wrap under pressure', 'live line'],
  compute: thicknessSharingLive,
  equation: {
    where: [{ symbol: 's_l', kind: 'stress', expression: 's - P_l * D / (2 * t_s)' }],
    branches: [
      { when: 'P * D / 2 <= s * t_s', expression: '0 * D' },
      { expression: 'E_s / E_c * (P * D / 2 - s * t_s) / s_l' },
    ],
  },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'design pressure', sample: [0, 20e6] },
    livePressure: { symbol: 'P_l', kind: 'gauge pressure', name: 'pressure during application', sample: [0, 5e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.05, 1.2] },
    allowableStress: { symbol: 's', kind: 'stress', name: 'allowable stress of the pipe', sample: [8e7, 4e8] },
    remainingWall: { symbol: 't_s', kind: 'length', name: 'remaining wall at the end of life', sample: [0.001, 0.02] },
    substrateModulus: { symbol: 'E_s', kind: 'modulus', name: 'modulus of the pipe', sample: [65e9, 210e9] },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [8e9, 80e9] },
  },
  output: { symbol: 't', kind: 'length', name: 'laminate thickness' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'root of two springs joined under load' } },
  limits: [],
});
