import { atMost, formula, positive, refuse } from '../../formula/index.js';
import type { EnergyReleaseRate, GaugePressure, Length, Modulus } from '../../quantity/index.js';

export interface ThicknessWideSlotInput {
  readonly pressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly slotWidth: Length;
  readonly hoopModulus: Modulus;
  readonly stripModulus: Modulus;
  readonly energyReleaseRate: EnergyReleaseRate;
  readonly serviceFactor: number;
  readonly overshoot?: number;
}

/**
 * Laminate thickness that holds a pressure as a ring over a wide slot: the inverse of `wideSlotResistance` on a rigid pipe.
 *
 * $$t = \frac{b D^2}{8 E_c \left(\frac{f^2 \gamma}{P^2} - \frac{\pi W}{4 E'}\right)}$$
 *
 * @param input.pressure           P, design pressure [Pa], > 0
 * @param input.outsideDiameter    D [m], > 0
 * @param input.slotWidth          W, the smaller extent of the slot [m], > 0
 * @param input.hoopModulus        E_c [Pa], > 0
 * @param input.stripModulus       E', the lower one of both directions [Pa], > 0
 * @param input.energyReleaseRate  gamma, lower confidence limit for the bond [J/m2], > 0
 * @param input.serviceFactor      f, product of service, temperature and cyclic factor, above 0, at most 1
 * @param input.overshoot          b, release of a curved strip over that of its membrane, 1.6 unless given
 * @returns laminate thickness [m]
 * @throws CalculationError `invalid-input`; `no-solution` at and above the pressure of `slotPressureCeiling`
 * @remarks As `wideSlotResistance`.
 */
export function thicknessWideSlot(input: ThicknessWideSlotInput): Length {
  const { pressure: P, outsideDiameter: D, slotWidth: W, hoopModulus: Ec, stripModulus: Ep } = input;
  const { energyReleaseRate: gamma, serviceFactor: f, overshoot: b = 1.6 } = input;
  positive(P, 'pressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  positive(W, 'slotWidth', 'm');
  positive(Ec, 'hoopModulus', 'Pa');
  positive(Ep, 'stripModulus', 'Pa');
  positive(gamma, 'energyReleaseRate', 'J/m2');
  positive(f, 'serviceFactor', '');
  atMost(f, 1, 'the whole resistance', 'serviceFactor', '');
  positive(b, 'overshoot', '');
  const left = ((f / P) * (f / P) * gamma * Ep) / W - Math.PI / 4;
  if (!(left > 0)) {
    refuse({
      code: 'no-solution',
      parameter: 'pressure',
      value: P,
      unit: 'Pa',
      constraint: `must be below {limit}, the ceiling for this bond over a slot ${W} m wide: no thickness holds more`,
      limit: f * Math.sqrt((4 * gamma * Ep) / (Math.PI * W)),
    });
  }
  const t = (((b * D) / 8) * (D / W) * (Ep / Ec)) / left;
  positive(t, 'laminate thickness', 'm');
  return t as Length;
}

export const thicknessWideSlotFormula = /* @__PURE__ */ formula<ThicknessWideSlotInput, Length>({
  id: 'laminate/thickness-wide-slot',
  title: 'Thickness over a wide slot',
  compute: thicknessWideSlot,
  equation: { expression: 'b * D^2 / (8 * E_c * (f^2 * gamma / P^2 - pi * W / (4 * E_p)))' },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'design pressure', sample: [1e5, 3e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    slotWidth: { symbol: 'W', kind: 'length', name: 'smaller extent of the slot', sample: [0.015, 0.4] },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [8e9, 80e9] },
    stripModulus: { symbol: 'E_p', kind: 'modulus', name: 'lower modulus of the strip', sample: [4e9, 90e9] },
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
      default: 1.6,
      sample: [1, 2],
    },
  },
  output: { symbol: 't', kind: 'length', name: 'laminate thickness' },
  sources: [],
  evidence: {
    form: { tag: 'chosen', derived: 'bisection of the energy balance' },
    overshoot: { tag: 'chosen', derived: 'clamped arc and clamped ring' },
  },
  limits: [],
});
