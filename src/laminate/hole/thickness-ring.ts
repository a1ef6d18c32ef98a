import { atMost, formula, positive, refuse } from '../../formula/index.js';
import type { EnergyReleaseRate, GaugePressure, Length, Modulus } from '../../quantity/index.js';

export interface ThicknessRingInput {
  readonly pressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly unbondedLength: Length;
  readonly hoopModulus: Modulus;
  readonly energyReleaseRate: EnergyReleaseRate;
  readonly serviceFactor: number;
  readonly overshoot?: number;
}

/**
 * Laminate thickness that holds a pressure as a ring that is bonded nowhere round the pipe over a length: the inverse of
 * `ringResistance`.
 *
 * $$t = \frac{b D^2}{8 \left(\frac{f^2 \gamma E_c}{P^2} - \frac{\pi W}{4}\right)}$$
 *
 * @param input.pressure           P, design pressure [Pa], > 0
 * @param input.outsideDiameter    D [m], > 0
 * @param input.unbondedLength     W, largest extent along the pipe of what nothing bonds to [m], > 0
 * @param input.hoopModulus        E_c [Pa], > 0
 * @param input.energyReleaseRate  gamma, lower confidence limit for the bond [J/m2], > 0
 * @param input.serviceFactor      f, product of service, temperature and cyclic factor, above 0, at most 1
 * @param input.overshoot          b, release of the curved strip over that of its membrane, 1.55 unless given
 * @returns laminate thickness [m]
 * @throws CalculationError `invalid-input`; `no-solution` at and above the pressure of `ringPressureCeiling`
 * @remarks As `ringResistance`.
 */
export function thicknessRing(input: ThicknessRingInput): Length {
  const { pressure: P, outsideDiameter: D, unbondedLength: W, hoopModulus: Ec } = input;
  const { energyReleaseRate: gamma, serviceFactor: f, overshoot: b = 1.55 } = input;
  positive(P, 'pressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  positive(W, 'unbondedLength', 'm');
  positive(Ec, 'hoopModulus', 'Pa');
  positive(gamma, 'energyReleaseRate', 'J/m2');
  positive(f, 'serviceFactor', '');
  atMost(f, 1, 'the whole resistance', 'serviceFactor', '');
  positive(b, 'overshoot', '');
  const left = (f / P) * (f / P) * gamma * Ec - (Math.PI * W) / 4;
  if (!(left > 0)) {
    refuse({
      code: 'no-solution',
      parameter: 'pressure',
      value: P,
      unit: 'Pa',
      constraint: `must be below {limit}, the ceiling for this bond round an unbonded ring of ${W} m: no thickness holds more`,
      limit: f * Math.sqrt((4 * gamma * Ec) / (Math.PI * W)),
    });
  }
  const t = (b * D * D) / 8 / left;
  positive(t, 'laminate thickness', 'm');
  return t as Length;
}

export const thicknessRingFormula = /* @__PURE__ */ formula<ThicknessRingInput, Length>({
  id: 'laminate/thickness-ring',
  title: 'Thickness of a ring that is bonded nowhere round the pipe',
  compute: thicknessRing,
  equation: { expression: 'b * D^2 / (8 * (f^2 * gamma * E_c / P^2 - pi * W / 4))' },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'design pressure', sample: [1e5, 10e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    unbondedLength: { symbol: 'W', kind: 'length', name: 'unbonded length along the pipe', sample: [0.015, 0.4] },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [8e9, 80e9] },
    energyReleaseRate: {
      symbol: 'gamma',
      kind: 'energy release rate',
      name: 'energy release rate of the bond',
      sample: [50, 500],
    },
    serviceFactor: { symbol: 'f', kind: 'number', name: 'service factor', sample: [0.1, 1] },
    overshoot: {
      symbol: 'b',
      kind: 'number',
      name: 'release of the curved strip over that of its membrane',
      default: 1.55,
      sample: [1, 2],
    },
  },
  output: { symbol: 't', kind: 'length', name: 'laminate thickness' },
  sources: [],
  evidence: {
    form: { tag: 'chosen', derived: 'bisection of the energy balance' },
    overshoot: { tag: 'chosen', derived: 'clamped ring and clamped arc' },
  },
  limits: [],
});
