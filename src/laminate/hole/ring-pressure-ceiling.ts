import { atMost, finite, formula, positive } from '../../formula/index.js';
import type { EnergyReleaseRate, GaugePressure, Length, Modulus } from '../../quantity/index.js';

export interface RingPressureCeilingInput {
  readonly unbondedLength: Length;
  readonly hoopModulus: Modulus;
  readonly energyReleaseRate: EnergyReleaseRate;
  readonly serviceFactor: number;
}

/**
 * Pressure that no laminate, however thick, can hold as a ring that is bonded nowhere round the pipe over a length.
 *
 * $$P_\infty = f \sqrt{\frac{4 \gamma E_c}{\pi W}}$$
 *
 * @param input.unbondedLength     W, largest extent along the pipe of what nothing bonds to [m], > 0
 * @param input.hoopModulus        E_c [Pa], > 0
 * @param input.energyReleaseRate  gamma, lower confidence limit for the bond [J/m2], > 0
 * @param input.serviceFactor      f, product of service, temperature and cyclic factor, above 0, at most 1
 * @returns ceiling of the pressure [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks Own form: `ringResistance` in the limit of a thick laminate. It is approached and never reached.
 */
export function ringPressureCeiling(input: RingPressureCeilingInput): GaugePressure {
  const { unbondedLength: W, hoopModulus: Ec, energyReleaseRate: gamma, serviceFactor: f } = input;
  positive(W, 'unbondedLength', 'm');
  positive(Ec, 'hoopModulus', 'Pa');
  positive(gamma, 'energyReleaseRate', 'J/m2');
  positive(f, 'serviceFactor', '');
  atMost(f, 1, 'the whole resistance', 'serviceFactor', '');
  const pressure = f * Math.sqrt((4 * gamma * Ec) / (Math.PI * W));
  finite(pressure, 'pressure', 'Pa');
  return pressure as GaugePressure;
}

export const ringPressureCeilingFormula = /* @__PURE__ */ formula<RingPressureCeilingInput, GaugePressure>({
  id: 'laminate/ring-pressure-ceiling',
  title: 'Highest pressure any laminate can hold as an unbonded ring',
  compute: ringPressureCeiling,
  equation: { expression: 'f * sqrt(4 * gamma * E_c / (pi * W))' },
  inputs: {
    unbondedLength: { symbol: 'W', kind: 'length', name: 'unbonded length along the pipe', sample: [0.015, 0.4] },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [8e9, 80e9] },
    energyReleaseRate: {
      symbol: 'gamma',
      kind: 'energy release rate',
      name: 'energy release rate of the bond',
      sample: [50, 500],
    },
    serviceFactor: { symbol: 'f', kind: 'number', name: 'service factor', sample: [0.1, 1] },
  },
  output: { symbol: 'P_inf', kind: 'gauge pressure', name: 'ceiling of the pressure' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'half of a crack under a rigid block' } },
  limits: [],
});
