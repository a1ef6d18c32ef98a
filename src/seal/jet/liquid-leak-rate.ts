import { atMost, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Area, Density, GaugePressure, VolumeFlow } from '../../quantity/index.js';

export interface LiquidLeakRateInput {
  readonly pressureDifference: GaugePressure;
  readonly density: Density;
  readonly holeArea: Area;
  readonly dischargeCoefficient?: number | undefined;
}

/**
 * Flow of a liquid out of a hole.
 *
 * $$Q = C_d A \sqrt{\frac{2 \Delta p}{\rho}}$$
 *
 * @param input.pressureDifference dp, pressure inside above that outside [Pa], >= 0
 * @param input.density rho, density of the liquid [kg/m3], > 0
 * @param input.holeArea A, area of the hole [m2], > 0
 * @param input.dischargeCoefficient C_d, discharge coefficient of the hole, > 0, at most 1; 1, the most, when not
 *   given
 * @returns leak rate [m3/s]
 * @throws CalculationError `invalid-input`
 * @remarks About 0.61 for a sharp hole, 0.80 for a short tube, 0.98 for a nozzle; nobody measured a corroded hole,
 *   so the default of 1 overstates rather than understates. Not for liquid that flashes.
 * @see worked examples of orifice flow on public web pages
 */
export function liquidLeakRate(input: LiquidLeakRateInput): VolumeFlow {
  const { pressureDifference: dp, density: rho, holeArea: A, dischargeCoefficient: Cd = 1 } = input;
  nonNegative(dp, 'pressureDifference', 'Pa');
  positive(rho, 'density', 'kg/m3');
  positive(A, 'holeArea', 'm2');
  positive(Cd, 'dischargeCoefficient', '');
  atMost(Cd, 1, 'the ideal flow', 'dischargeCoefficient', '');
  const flow = Cd * A * Math.sqrt((2 * dp) / rho);
  finite(flow, 'leak rate', 'm3/s');
  return flow as VolumeFlow;
}

export const liquidLeakRateFormula = /* @__PURE__ */ formula<LiquidLeakRateInput, VolumeFlow>({
  id: 'seal/liquid-leak-rate',
  title: 'Leak rate of a liquid',
  search: ['orifice', 'torricelli'],
  compute: liquidLeakRate,
  equation: { expression: 'C_d * A * sqrt(2 * dp / rho)' },
  inputs: {
    pressureDifference: {
      symbol: 'dp',
      kind: 'gauge pressure',
      name: 'pressure inside above that outside',
      sample: [0, 10e6],
    },
    density: { symbol: 'rho', kind: 'density', name: 'density of the liquid', sample: [600, 1200] },
    holeArea: { symbol: 'A', kind: 'area', name: 'area of the hole', sample: [1e-6, 0.001] },
    dischargeCoefficient: {
      symbol: 'C_d',
      kind: 'number',
      name: 'discharge coefficient of the hole',
      sample: [0.5, 1],
      default: 1,
    },
  },
  output: { symbol: 'Q', kind: 'volume flow', name: 'leak rate' },
  sources: [{ key: 'web-seal-examples', locator: 'orifice flow and discharge coefficients' }],
  evidence: {
    form: { tag: 'secondary', derived: 'speed of the jet times its area' },
    dischargeCoefficient: { tag: 'chosen', note: 'default: the most that a hole can pass' },
  },
  limits: [],
});
