import { atMost, formula, positive, refuse } from '../../formula/index.js';
import type { EnergyReleaseRate, GaugePressure, Length, Modulus } from '../../quantity/index.js';
import {
  edgeFactor,
  energyReleaseRate,
  serviceFactor,
  shearModulus,
  slotWidth,
  stripModulus,
  turningRoot,
} from '../declared-inputs.js';

export interface ThicknessSlotInput {
  readonly pressure: GaugePressure;
  readonly slotWidth: Length;
  readonly stripModulus: Modulus;
  readonly shearModulus: Modulus;
  readonly energyReleaseRate: EnergyReleaseRate;
  readonly serviceFactor: number;
  readonly edgeFactor?: number;
  readonly turningRoot?: number;
}

/**
 * Laminate thickness that holds a pressure as a strip over a slot: the inverse of `slotResistance` in closed form.
 *
 * With $x = W/t$ the equation is the cubic $x^3 + p x = q$, where
 * $$p = \frac{9 E'}{2 G}, \qquad q = 24\left(\frac{f^2 \gamma E'}{m P^2 W} - \frac{\pi h}{4}\right), \qquad
 *   x = 2\sqrt{\frac{p}{3}} \sinh\left(\frac13 \operatorname{asinh}\left(\frac{3 q}{2 p}\sqrt{\frac{3}{p}}\right)\right)$$
 *
 * @param input.pressure           P, design pressure [Pa], > 0
 * @param input.slotWidth          W, across the slot [m], > 0
 * @param input.stripModulus       E', of `stripModulus` in the direction of W [Pa], > 0
 * @param input.shearModulus       G, of the laminate [Pa], > 0
 * @param input.energyReleaseRate  gamma, lower confidence limit for the bond [J/m2], > 0
 * @param input.serviceFactor      f, product of service, temperature and cyclic factor, above 0, at most 1
 * @param input.edgeFactor         h, of `softEdgeFactor`, >= 1; 1 unless given, a laminate alike in all directions
 * @param input.turningRoot        m, release with a root that turns over that of a clamped one, >= 1; 1.4 unless given
 * @returns laminate thickness [m]
 * @throws CalculationError `invalid-input`; `no-solution` at and above the pressure of `slotPressureCeiling`
 * @remarks As `slotResistance`. The root is polished by one step of Newton, as in `thicknessHole`.
 * @see ISO 24817:2017, 7.5.7; ASME PCC-2, Eq. 13, as recalled
 */
export function thicknessSlot(input: ThicknessSlotInput): Length {
  const { pressure: P, slotWidth: W, stripModulus: Ep, shearModulus: G } = input;
  const { energyReleaseRate: gamma, serviceFactor: f, edgeFactor: h = 1, turningRoot: m = 1.4 } = input;
  positive(P, 'pressure', 'Pa');
  positive(W, 'slotWidth', 'm');
  positive(Ep, 'stripModulus', 'Pa');
  positive(G, 'shearModulus', 'Pa');
  positive(gamma, 'energyReleaseRate', 'J/m2');
  positive(f, 'serviceFactor', '');
  atMost(f, 1, 'the whole resistance', 'serviceFactor', '');
  positive(h, 'edgeFactor', '');
  positive(m, 'turningRoot', '');
  const p = (4.5 * Ep) / G;
  const q = 24 * ((f * f * gamma * Ep) / (m * P * P * W) - (Math.PI * h) / 4);
  if (!(q > 0)) {
    refuse({
      code: 'no-solution',
      parameter: 'pressure',
      value: P,
      unit: 'Pa',
      constraint: `must be below {limit}, the ceiling for this bond over a slot ${W} m wide: no thickness holds more`,
      limit: f * Math.sqrt((4 * gamma * Ep) / (m * h * Math.PI * W)),
      source: 'after ISO 24817:2017, 7.5.7, as recalled',
    });
  }
  const start = 2 * Math.sqrt(p / 3) * Math.sinh(Math.asinh(((3 * q) / (2 * p)) * Math.sqrt(3 / p)) / 3);
  const x = start - (start * start * start + p * start - q) / (3 * start * start + p);
  const t = W / x;
  positive(t, 'laminate thickness', 'm');
  return t as Length;
}

export const thicknessSlotFormula = /* @__PURE__ */ formula<ThicknessSlotInput, Length>({
  id: 'laminate/thickness-slot',
  title: 'Thickness over a slot',
  search: ['crack', 'leak'],
  compute: thicknessSlot,
  equation: {
    where: [
      { symbol: 'p', kind: 'number', expression: '9 * E_p / (2 * G)' },
      { symbol: 'q', kind: 'number', expression: '24 * (f^2 * gamma * E_p / (m * P^2 * W) - pi * h / 4)' },
      { symbol: 'x', kind: 'number', expression: '2 * sqrt(p / 3) * sinh(asinh(3 * q / (2 * p) * sqrt(3 / p)) / 3)' },
    ],
    expression: 'W / x',
  },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'design pressure', sample: [1e5, 5e6] },
    slotWidth,
    stripModulus,
    shearModulus,
    energyReleaseRate,
    serviceFactor,
    edgeFactor,
    turningRoot,
  },
  output: { symbol: 't', kind: 'length', name: 'laminate thickness' },
  sources: [
    { key: 'iso-24817', locator: '7.5.7, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, Eq. 13, as recalled' },
  ],
  evidence: { form: { tag: 'recalled', derived: 'bisection of the energy balance' } },
  limits: [],
});
