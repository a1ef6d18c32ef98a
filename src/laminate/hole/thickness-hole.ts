import { atMost, formula, positive, refuse } from '../../formula/index.js';
import type { EnergyReleaseRate, GaugePressure, Length, Modulus } from '../../quantity/index.js';
import {
  axialModulus,
  edgeFactor,
  energyReleaseRate,
  holeDiameter,
  hoopModulus,
  poissonRatio,
  serviceFactor,
  shearModulus,
} from '../declared-inputs.js';
import { plateModulus } from './plate-modulus.js';

export interface ThicknessHoleInput {
  readonly pressure: GaugePressure;
  readonly holeDiameter: Length;
  readonly hoopModulus: Modulus;
  readonly axialModulus: Modulus;
  readonly poissonRatio: number;
  readonly shearModulus: Modulus;
  readonly energyReleaseRate: EnergyReleaseRate;
  readonly serviceFactor: number;
  readonly edgeFactor?: number;
}

/**
 * Laminate thickness that holds a pressure over a round through-wall hole: the inverse of `holeResistance` in closed form.
 *
 * With $x = d/t$ the equation is the cubic $x^3 + p x = q$, where
 * $$p = \frac{8 E'}{G}, \qquad q = \frac{512}{3}\left(\frac{f^2 \gamma E'}{P^2 d} - \frac{h}{\pi}\right), \qquad
 *   x = 2\sqrt{\frac{p}{3}} \sinh\left(\frac13 \operatorname{asinh}\left(\frac{3 q}{2 p}\sqrt{\frac{3}{p}}\right)\right)$$
 *
 * @param input.pressure           P, design pressure [Pa], > 0
 * @param input.holeDiameter       d, as `designHoleDiameter` gives it [m], > 0
 * @param input.hoopModulus        E_c [Pa], > 0
 * @param input.axialModulus       E_a [Pa], > 0
 * @param input.poissonRatio       nu_ca, 0 to 1
 * @param input.shearModulus       G, of the laminate [Pa], > 0
 * @param input.energyReleaseRate  gamma, lower confidence limit for the bond [J/m2], > 0
 * @param input.serviceFactor      f, product of service, temperature and cyclic factor, above 0, at most 1
 * @param input.edgeFactor         h, of `softEdgeFactor`, >= 1; 1 unless given, a laminate alike in all directions
 * @returns laminate thickness [m]
 * @throws CalculationError `invalid-input`; `no-solution` at and above the pressure of `holePressureCeiling`
 * @remarks As `holeResistance`. The root is polished by one step of Newton, since sinh of asinh loses digits where
 *   bending alone counts.
 * @see ISO 24817:2017, 7.5.7; ASME PCC-2, Eq. 12, as recalled
 */
export function thicknessHole(input: ThicknessHoleInput): Length {
  const { pressure: P, holeDiameter: d, shearModulus: G, energyReleaseRate: gamma } = input;
  const { serviceFactor: f, edgeFactor: h = 1 } = input;
  positive(P, 'pressure', 'Pa');
  positive(d, 'holeDiameter', 'm');
  positive(G, 'shearModulus', 'Pa');
  positive(gamma, 'energyReleaseRate', 'J/m2');
  positive(f, 'serviceFactor', '');
  atMost(f, 1, 'the whole resistance', 'serviceFactor', '');
  positive(h, 'edgeFactor', '');
  const Ep = plateModulus(input);
  const p = (8 * Ep) / G;
  const q = (512 / 3) * ((f * f * gamma * Ep) / (P * P * d) - h / Math.PI);
  if (!(q > 0)) {
    refuse({
      code: 'no-solution',
      parameter: 'pressure',
      value: P,
      unit: 'Pa',
      constraint: `must be below {limit}, the ceiling for this bond over a hole of ${d} m: no thickness holds more`,
      limit: f * Math.sqrt((Math.PI * gamma * Ep) / (h * d)),
      source: 'after ISO 24817:2017, 7.5.7, as recalled',
    });
  }
  const start = 2 * Math.sqrt(p / 3) * Math.sinh(Math.asinh(((3 * q) / (2 * p)) * Math.sqrt(3 / p)) / 3);
  const x = start - (start * start * start + p * start - q) / (3 * start * start + p);
  const t = d / x;
  positive(t, 'laminate thickness', 'm');
  return t as Length;
}

export const thicknessHoleFormula = /* @__PURE__ */ formula<ThicknessHoleInput, Length>({
  id: 'laminate/thickness-hole',
  title: 'Thickness over a round hole',
  search: ['leak', 'pinhole', 'perforation', 'patch'],
  compute: thicknessHole,
  equation: {
    where: [
      { symbol: 'E_ac', kind: 'modulus', expression: 'sqrt(E_a * E_c)' },
      { symbol: 'nu_2', kind: 'number', expression: 'nu_ca^2 * E_a / E_c' },
      { symbol: 'E_p', kind: 'modulus', expression: 'E_ac / (1 - nu_2)' },
      { symbol: 'p', kind: 'number', expression: '8 * E_p / G' },
      { symbol: 'q', kind: 'number', expression: '512 / 3 * (f^2 * gamma * E_p / (P^2 * d) - h / pi)' },
      { symbol: 'x', kind: 'number', expression: '2 * sqrt(p / 3) * sinh(asinh(3 * q / (2 * p) * sqrt(3 / p)) / 3)' },
    ],
    expression: 'd / x',
  },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'design pressure', sample: [1e5, 10e6] },
    holeDiameter,
    hoopModulus,
    axialModulus,
    poissonRatio,
    shearModulus,
    energyReleaseRate,
    serviceFactor,
    edgeFactor,
  },
  output: { symbol: 't', kind: 'length', name: 'laminate thickness' },
  sources: [
    { key: 'iso-24817', locator: '7.5.7, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, Eq. 12, as recalled' },
  ],
  evidence: { form: { tag: 'recalled', derived: 'bisection of the energy balance' } },
  limits: [],
});
