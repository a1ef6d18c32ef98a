import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Acceleration, Density, GaugePressure, Length } from '../../quantity/index.js';

export interface SoilPressureInput {
  readonly cover: Length;
  readonly density: Density;
  readonly traffic: GaugePressure;
  readonly gravity?: Acceleration;
}

/**
 * Pressure of soil and traffic on the top of a buried pipe: the prism of soil above it, and what traffic adds.
 *
 * $$q = \rho g H + q_t$$
 *
 * @param input.cover    H, from the surface to the top of the pipe [m], > 0
 * @param input.density  rho, of the soil as it lies, wet [kg/m3], > 0
 * @param input.traffic  q_t, pressure of traffic at the top of the pipe [Pa], >= 0
 * @param input.gravity  g [N/kg]; 9.80665 unless given
 * @returns pressure on the top of the pipe [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks Nothing is taken off for soil that hangs on the sides of the trench, nor for the lift of ground water.
 */
export function soilPressure(input: SoilPressureInput): GaugePressure {
  const { cover: H, density: rho, traffic: qt, gravity: g = 9.80665 } = input;
  positive(H, 'cover', 'm');
  positive(rho, 'density', 'kg/m3');
  nonNegative(qt, 'traffic', 'Pa');
  positive(g, 'gravity', 'N/kg');
  const q = rho * g * H + qt;
  finite(q, 'pressure of the soil', 'Pa');
  return q as GaugePressure;
}

export const soilPressureFormula = /* @__PURE__ */ formula<SoilPressureInput, GaugePressure>({
  id: 'pipe/soil-pressure',
  title: 'Pressure of soil and traffic on a buried pipe',
  search: ['backfill', 'cover', 'overburden', 'road crossing'],
  compute: soilPressure,
  equation: { expression: 'rho * g * H + q_t' },
  inputs: {
    cover: { symbol: 'H', kind: 'length', name: 'cover of soil', sample: [0.3, 10] },
    density: { symbol: 'rho', kind: 'density', name: 'density of the soil', sample: [1200, 2400] },
    traffic: { symbol: 'q_t', kind: 'gauge pressure', name: 'pressure of traffic', sample: [0, 1e5] },
    gravity: { symbol: 'g', kind: 'acceleration', name: 'acceleration of fall', sample: [9.7, 9.9], default: 9.80665 },
  },
  output: { symbol: 'q', kind: 'gauge pressure', name: 'pressure on the top of the pipe' },
  sources: [],
  evidence: { form: { tag: 'practice', derived: 'weight of the prism of soil over the pipe' } },
  limits: [],
});
