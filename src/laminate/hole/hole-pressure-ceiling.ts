import { atMost, finite, formula, positive } from '../../formula/index.js';
import type { EnergyReleaseRate, GaugePressure, Length, Modulus } from '../../quantity/index.js';
import {
  axialModulus,
  edgeFactor,
  energyReleaseRate,
  holeDiameter,
  hoopModulus,
  poissonRatio,
  serviceFactor,
} from '../declared-inputs.js';
import { plateModulus } from './plate-modulus.js';

export interface HolePressureCeilingInput {
  readonly holeDiameter: Length;
  readonly hoopModulus: Modulus;
  readonly axialModulus: Modulus;
  readonly poissonRatio: number;
  readonly energyReleaseRate: EnergyReleaseRate;
  readonly serviceFactor: number;
  readonly edgeFactor?: number;
}

/**
 * Pressure that no laminate, however thick, can hold over a round hole with this bond.
 *
 * $$P_\infty = f \sqrt{\frac{\pi \gamma E'}{h d}}$$
 *
 * @param input.holeDiameter       d, as `designHoleDiameter` gives it [m], > 0
 * @param input.hoopModulus        E_c [Pa], > 0
 * @param input.axialModulus       E_a [Pa], > 0
 * @param input.poissonRatio       nu_ca, 0 to 1
 * @param input.energyReleaseRate  gamma, lower confidence limit for the bond [J/m2], > 0
 * @param input.serviceFactor      f, product of service, temperature and cyclic factor, above 0, at most 1
 * @param input.edgeFactor         h, of `softEdgeFactor`, >= 1; 1 unless given, a laminate alike in all directions
 * @returns ceiling of the pressure [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks The half crack under a rigid block is left when bending and shear are gone; the ceiling is approached and
 *   never reached.
 * @see ISO 24817:2017, 7.5.7; ASME PCC-2, Eq. 12, as recalled, in the limit of a thick laminate
 */
export function holePressureCeiling(input: HolePressureCeilingInput): GaugePressure {
  const { holeDiameter: d, energyReleaseRate: gamma, serviceFactor: f, edgeFactor: h = 1 } = input;
  positive(d, 'holeDiameter', 'm');
  positive(gamma, 'energyReleaseRate', 'J/m2');
  positive(f, 'serviceFactor', '');
  atMost(f, 1, 'the whole resistance', 'serviceFactor', '');
  positive(h, 'edgeFactor', '');
  const pressure = f * Math.sqrt((Math.PI * gamma * plateModulus(input)) / (h * d));
  finite(pressure, 'pressure', 'Pa');
  return pressure as GaugePressure;
}

export const holePressureCeilingFormula = /* @__PURE__ */ formula<HolePressureCeilingInput, GaugePressure>({
  id: 'laminate/hole-pressure-ceiling',
  title: 'Highest pressure any laminate can hold over a round hole',
  search: ['leak', 'pinhole', 'blister'],
  compute: holePressureCeiling,
  equation: {
    where: [
      { symbol: 'E_ac', kind: 'modulus', expression: 'sqrt(E_a * E_c)' },
      { symbol: 'nu_2', kind: 'number', expression: 'nu_ca^2 * E_a / E_c' },
      { symbol: 'E_p', kind: 'modulus', expression: 'E_ac / (1 - nu_2)' },
    ],
    expression: 'f * sqrt(pi * gamma * E_p / (h * d))',
  },
  inputs: {
    holeDiameter,
    hoopModulus,
    axialModulus,
    poissonRatio,
    energyReleaseRate,
    serviceFactor,
    edgeFactor,
  },
  output: { symbol: 'P_inf', kind: 'gauge pressure', name: 'ceiling of the pressure' },
  sources: [
    { key: 'iso-24817', locator: '7.5.7, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, Eq. 12, as recalled' },
  ],
  evidence: { form: { tag: 'recalled', derived: 'half penny crack under a rigid block' } },
  limits: [],
});
