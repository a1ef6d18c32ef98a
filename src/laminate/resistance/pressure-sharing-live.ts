import { below, finite, formula, nonNegative, positive, refuse } from '../../formula/index.js';
import type { GaugePressure, Length, Modulus, Stress } from '../../quantity/index.js';

export interface PressureSharingLiveInput {
  readonly laminateThickness: Length;
  readonly livePressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly allowableStress: Stress;
  readonly remainingWall: Length;
  readonly substrateModulus: Modulus;
  readonly hoopModulus: Modulus;
}

/**
 * Pressure at which a pipe that was wrapped under pressure reaches its allowable stress: the inverse of
 * `thicknessSharingLive`.
 *
 * $$P = P_l + \frac{2}{D}\left(s - \frac{P_l D}{2 t_s}\right)\left(t_s + \frac{E_c}{E_s} t\right)$$
 *
 * @param input.laminateThickness  t [m], >= 0
 * @param input.livePressure       P_l, pressure in the pipe while the laminate cures [Pa], >= 0
 * @param input.outsideDiameter    D [m], > 0
 * @param input.allowableStress    s, of the pipe [Pa], > 0
 * @param input.remainingWall      t_s, least wall at the end of life [m], > 0 and < D/2
 * @param input.substrateModulus   E_s [Pa], > 0
 * @param input.hoopModulus        E_c, of the laminate [Pa], > 0
 * @returns pressure [Pa]
 * @throws CalculationError `invalid-input`; `no-solution` when the live pressure alone takes the pipe to its allowable stress
 */
export function pressureSharingLive(input: PressureSharingLiveInput): GaugePressure {
  const { laminateThickness: t, livePressure: Pl, outsideDiameter: D, allowableStress: s, remainingWall: ts } = input;
  const { substrateModulus: Es, hoopModulus: Ec } = input;
  nonNegative(t, 'laminateThickness', 'm');
  nonNegative(Pl, 'livePressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  positive(s, 'allowableStress', 'Pa');
  positive(ts, 'remainingWall', 'm');
  below(ts, D / 2, 'half the outside diameter', 'remainingWall', 'm');
  positive(Es, 'substrateModulus', 'Pa');
  positive(Ec, 'hoopModulus', 'Pa');
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
  const pressure = Pl + (2 / D) * spare * (ts + (Ec / Es) * t);
  finite(pressure, 'pressure', 'Pa');
  return pressure as GaugePressure;
}

export const pressureSharingLiveFormula = /* @__PURE__ */ formula<PressureSharingLiveInput, GaugePressure>({
  id: 'laminate/pressure-sharing-live',
  title: 'Pressure held, pipe shares the load, applied under pressure',
  compute: pressureSharingLive,
  equation: {
    where: [{ symbol: 's_l', kind: 'stress', expression: 's - P_l * D / (2 * t_s)' }],
    expression: 'P_l + 2 / D * s_l * (t_s + E_c / E_s * t)',
  },
  inputs: {
    laminateThickness: { symbol: 't', kind: 'length', name: 'laminate thickness', sample: [0, 0.05] },
    livePressure: { symbol: 'P_l', kind: 'gauge pressure', name: 'pressure during application', sample: [0, 5e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.05, 1.2] },
    allowableStress: { symbol: 's', kind: 'stress', name: 'allowable stress of the pipe', sample: [8e7, 4e8] },
    remainingWall: { symbol: 't_s', kind: 'length', name: 'remaining wall at the end of life', sample: [0.001, 0.02] },
    substrateModulus: { symbol: 'E_s', kind: 'modulus', name: 'modulus of the pipe', sample: [65e9, 210e9] },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [8e9, 80e9] },
  },
  output: { symbol: 'P', kind: 'gauge pressure', name: 'pressure held' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'root of two springs joined under load' } },
  limits: [],
});
