import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Density, GaugePressure, Speed } from '../../quantity/index.js';

export interface JetSpeedInput {
  readonly pressureDifference: GaugePressure;
  readonly density: Density;
}

/**
 * Speed of a liquid jet out of a hole.
 *
 * $$v = \sqrt{\frac{2 \Delta p}{\rho}}$$
 *
 * @param input.pressureDifference dp, pressure inside above that outside [Pa], >= 0
 * @param input.density rho, density of the liquid [kg/m3], > 0
 * @returns speed of the jet [m/s]
 * @throws CalculationError `invalid-input`
 * @remarks Without losses, so an upper bound. Not for gas, nor for liquid that flashes: their jets reach the speed
 *   of sound and more.
 * @see worked examples of orifice flow on public web pages
 */
export function jetSpeed(input: JetSpeedInput): Speed {
  const { pressureDifference: dp, density: rho } = input;
  nonNegative(dp, 'pressureDifference', 'Pa');
  positive(rho, 'density', 'kg/m3');
  const speed = Math.sqrt((2 * dp) / rho);
  finite(speed, 'jet speed', 'm/s');
  return speed as Speed;
}

export const jetSpeedFormula = /* @__PURE__ */ formula<JetSpeedInput, Speed>({
  id: 'seal/jet-speed',
  title: 'Speed of a liquid jet',
  search: ['torricelli', 'leak', 'orifice'],
  compute: jetSpeed,
  equation: { expression: 'sqrt(2 * dp / rho)' },
  inputs: {
    pressureDifference: {
      symbol: 'dp',
      kind: 'gauge pressure',
      name: 'pressure inside above that outside',
      sample: [0, 10e6],
    },
    density: { symbol: 'rho', kind: 'density', name: 'density of the liquid', sample: [600, 1200] },
  },
  output: { symbol: 'v', kind: 'speed', name: 'speed of the jet' },
  sources: [{ key: 'web-seal-examples', locator: 'orifice flow and discharge coefficients' }],
  evidence: { form: { tag: 'secondary', derived: 'energy balance of the liquid' } },
  limits: [],
});
