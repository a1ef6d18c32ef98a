import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Acceleration, Density, GaugePressure, Length } from '../../quantity/index.js';

export interface PressureFromOutsideInput {
  readonly externalPressure: GaugePressure;
  readonly soilPressure: GaugePressure;
  readonly waterAbove: Length;
  readonly waterDensity?: Density;
  readonly gravity?: Acceleration;
}

/**
 * All that presses on a pipe from outside while it is empty: vacuum and free water, soil with traffic, ground water.
 *
 * $$p = p_e + q + \rho_w g h_w$$
 *
 * @param input.externalPressure  p_e, of vacuum and free water, outside above inside [Pa], >= 0
 * @param input.soilPressure      q, of soil and traffic at the top of the pipe [Pa], >= 0
 * @param input.waterAbove        h_w, ground water over the top of the pipe [m], >= 0
 * @param input.waterDensity      rho_w [kg/m3], > 0; 1000 unless given
 * @param input.gravity           g [N/kg], > 0; 9.80665 unless given
 * @returns pressure from outside, as if it acted all round [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks The soil counts with its whole weight, though ground water lifts a part of it, and as if it pressed all round.
 */
export function pressureFromOutside(input: PressureFromOutsideInput): GaugePressure {
  const { externalPressure: pe, soilPressure: q, waterAbove: hw } = input;
  const { waterDensity: rho = 1000, gravity: g = 9.80665 } = input;
  nonNegative(pe, 'externalPressure', 'Pa');
  nonNegative(q, 'soilPressure', 'Pa');
  nonNegative(hw, 'waterAbove', 'm');
  positive(rho, 'waterDensity', 'kg/m3');
  positive(g, 'gravity', 'N/kg');
  const p = pe + q + rho * g * hw;
  finite(p, 'pressure from outside', 'Pa');
  return p as GaugePressure;
}

export const pressureFromOutsideFormula = /* @__PURE__ */ formula<PressureFromOutsideInput, GaugePressure>({
  id: 'pipe/pressure-from-outside',
  title: 'Pressure from outside on an empty pipe',
  search: ['vacuum', 'external pressure', 'soil', 'groundwater'],
  compute: pressureFromOutside,
  equation: { expression: 'p_e + q + rho_w * g * h_w' },
  inputs: {
    externalPressure: { symbol: 'p_e', kind: 'gauge pressure', name: 'vacuum and free water', sample: [0, 1e6] },
    soilPressure: { symbol: 'q', kind: 'gauge pressure', name: 'pressure of soil and traffic', sample: [0, 3e5] },
    waterAbove: { symbol: 'h_w', kind: 'length', name: 'ground water over the pipe', sample: [0, 10] },
    waterDensity: {
      symbol: 'rho_w',
      kind: 'density',
      name: 'density of water',
      sample: [990, 1030],
      default: 1000,
    },
    gravity: { symbol: 'g', kind: 'acceleration', name: 'acceleration of fall', sample: [9.7, 9.9], default: 9.80665 },
  },
  output: { symbol: 'p', kind: 'gauge pressure', name: 'pressure from outside' },
  sources: [],
  evidence: { form: { tag: 'practice', derived: 'sum of pressures that act together' } },
  limits: [],
});
