import { atMost, finite, formula, positive } from '../../formula/index.js';
import type { AbsolutePressure, Energy, Volume } from '../../quantity/index.js';
import { logRatio } from './log-ratio.js';

export interface GasEnergyIsothermalInput {
  readonly pressure: AbsolutePressure;
  readonly volume: Volume;
  readonly atmosphere: AbsolutePressure;
}

/**
 * Work that a gas under pressure can give while it expands to the atmosphere at one temperature.
 *
 * $$U = p_1 V \left(\ln \frac{p_1}{p_a} - 1 + \frac{p_a}{p_1}\right)$$
 *
 * @param input.pressure   p_1, absolute pressure of the gas [Pa], >= p_a
 * @param input.volume     V, volume of the gas [m3], > 0
 * @param input.atmosphere p_a, absolute pressure outside [Pa], > 0
 * @returns energy, less the work of pushing the atmosphere away [J]
 * @throws CalculationError `invalid-input`
 * @remarks The upper figure at high pressure. Near the atmosphere it is the lower one, as the isentropic form does not take
 *   off the work against the atmosphere.
 * @see A piping page that quotes ASME PCC-2, article 501
 */
export function gasEnergyIsothermal(input: GasEnergyIsothermalInput): Energy {
  const { pressure: p1, volume: V, atmosphere: pA } = input;
  positive(pA, 'atmosphere', 'Pa');
  positive(p1, 'pressure', 'Pa');
  atMost(pA, p1, 'the pressure of the gas', 'atmosphere', 'Pa');
  positive(V, 'volume', 'm3');
  // With x = 1 - p_a/p_1 the bracket keeps its digits near the atmosphere.
  const x = (p1 - pA) / p1;
  const U = p1 * V * (logRatio(p1, pA) - x);
  finite(U, 'energy of the gas', 'J');
  return U as Energy;
}

export const gasEnergyIsothermalFormula = /* @__PURE__ */ formula<GasEnergyIsothermalInput, Energy>({
  id: 'acceptance/gas-energy-isothermal',
  title: 'Stored energy of a gas, isothermal',
  search: ['pneumatic test'],
  compute: gasEnergyIsothermal,
  equation: { expression: 'p_1 * V * (log(p_1 / p_a) - 1 + p_a / p_1)' },
  inputs: {
    pressure: { symbol: 'p_1', kind: 'absolute pressure', name: 'pressure of the gas', sample: [3e5, 2e7] },
    volume: { symbol: 'V', kind: 'volume', name: 'volume of the gas', sample: [0.01, 100] },
    atmosphere: { symbol: 'p_a', kind: 'absolute pressure', name: 'pressure outside', sample: [9e4, 1.05e5] },
  },
  output: { symbol: 'U', kind: 'energy', name: 'available energy' },
  sources: [{ key: 'test-energy-page', locator: 'isothermal form' }],
  evidence: { form: { tag: 'secondary', derived: 'quadrature of (p - p_a) dV over the expansion' } },
  limits: [],
});
