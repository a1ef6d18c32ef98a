import { atMost, finite, formula, positive } from '../../formula/index.js';
import type { EnergyReleaseRate, GaugePressure, Length, Modulus } from '../../quantity/index.js';
import {
  edgeFactor,
  energyReleaseRate,
  serviceFactor,
  slotWidth,
  stripModulus,
  turningRoot,
} from '../declared-inputs.js';

export interface SlotPressureCeilingInput {
  readonly slotWidth: Length;
  readonly stripModulus: Modulus;
  readonly energyReleaseRate: EnergyReleaseRate;
  readonly serviceFactor: number;
  readonly edgeFactor?: number;
  readonly turningRoot?: number;
}

/**
 * Pressure that no laminate, however thick, can hold over a slot with this bond.
 *
 * $$P_\infty = f \sqrt{\frac{4 \gamma E'}{\pi m h W}}$$
 *
 * @param input.slotWidth          W, across the slot [m], > 0
 * @param input.stripModulus       E', of `stripModulus` in the direction of W [Pa], > 0
 * @param input.energyReleaseRate  gamma, lower confidence limit for the bond [J/m2], > 0
 * @param input.serviceFactor      f, product of service, temperature and cyclic factor, above 0, at most 1
 * @param input.edgeFactor         h, of `softEdgeFactor`, >= 1; 1 unless given, a laminate alike in all directions
 * @param input.turningRoot        m, release with a root that turns over that of a clamped one, >= 1; 1.4 unless given
 * @returns ceiling of the pressure [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks The half crack under a rigid block is left when bending and shear are gone; the ceiling is approached and
 *   never reached. That of `slotResistance`; with h = m = 1 that of `wideSlotResistance`.
 */
export function slotPressureCeiling(input: SlotPressureCeilingInput): GaugePressure {
  const { slotWidth: W, stripModulus: Ep, energyReleaseRate: gamma, serviceFactor: f } = input;
  const { edgeFactor: h = 1, turningRoot: m = 1.4 } = input;
  positive(W, 'slotWidth', 'm');
  positive(Ep, 'stripModulus', 'Pa');
  positive(gamma, 'energyReleaseRate', 'J/m2');
  positive(f, 'serviceFactor', '');
  atMost(f, 1, 'the whole resistance', 'serviceFactor', '');
  positive(h, 'edgeFactor', '');
  positive(m, 'turningRoot', '');
  const pressure = f * Math.sqrt((4 * gamma * Ep) / (m * h * Math.PI * W));
  finite(pressure, 'pressure', 'Pa');
  return pressure as GaugePressure;
}

export const slotPressureCeilingFormula = /* @__PURE__ */ formula<SlotPressureCeilingInput, GaugePressure>({
  id: 'laminate/slot-pressure-ceiling',
  title: 'Highest pressure any laminate can hold over a slot',
  compute: slotPressureCeiling,
  equation: { expression: 'f * sqrt(4 * gamma * E_p / (m * h * pi * W))' },
  inputs: {
    slotWidth,
    stripModulus,
    energyReleaseRate,
    serviceFactor,
    edgeFactor,
    turningRoot,
  },
  output: { symbol: 'P_inf', kind: 'gauge pressure', name: 'ceiling of the pressure' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'half of a Griffith crack under a rigid block' } },
  limits: [],
});
