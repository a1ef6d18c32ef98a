import { atMost, finite, formula, positive } from '../../formula/index.js';
import type { AbsolutePressure, Energy, Volume } from '../../quantity/index.js';
import { logRatio } from './log-ratio.js';

export interface AirTestEnergyInput {
  readonly pressure: AbsolutePressure;
  readonly volume: Volume;
  readonly atmosphere?: AbsolutePressure | undefined;
}

/**
 * Stored energy of a test with air or nitrogen, in the rounded form of the rule for the distance.
 *
 * $$E = 2.5\, p_t V \left(1 - \left(\frac{p_a}{p_t}\right)^{0.286}\right)$$
 *
 * @param input.pressure   p_t, absolute test pressure [Pa], >= p_a
 * @param input.volume     V, volume under test [m3], > 0
 * @param input.atmosphere p_a, absolute pressure outside [Pa], > 0; 101 kPa when not given
 * @returns energy [J]
 * @throws CalculationError `invalid-input`
 * @see ASME PCC-2, article 501, appendix II, as quoted on a piping page
 */
export function airTestEnergy(input: AirTestEnergyInput): Energy {
  const { pressure: pT, volume: V, atmosphere: pA = 101000 as AbsolutePressure } = input;
  positive(pA, 'atmosphere', 'Pa');
  positive(pT, 'pressure', 'Pa');
  atMost(pA, pT, 'the test pressure', 'atmosphere', 'Pa');
  positive(V, 'volume', 'm3');
  const share = -Math.expm1(0.286 * logRatio(pA, pT));
  const E = 2.5 * pT * V * share;
  finite(E, 'energy of the test', 'J');
  return E as Energy;
}

export const airTestEnergyFormula = /* @__PURE__ */ formula<AirTestEnergyInput, Energy>({
  id: 'acceptance/air-test-energy',
  title: 'Stored energy of a test with air or nitrogen',
  search: ['pneumatic test', 'blast'],
  compute: airTestEnergy,
  equation: { expression: '2.5 * p_t * V * (1 - (p_a / p_t)^0.286)' },
  inputs: {
    pressure: { symbol: 'p_t', kind: 'absolute pressure', name: 'test pressure', sample: [3e5, 2e7] },
    volume: { symbol: 'V', kind: 'volume', name: 'volume under test', sample: [0.01, 100] },
    atmosphere: {
      symbol: 'p_a',
      kind: 'absolute pressure',
      name: 'pressure outside',
      sample: [9e4, 1.05e5],
      default: 101000,
    },
  },
  output: { symbol: 'E', kind: 'energy', name: 'stored energy' },
  sources: [{ key: 'test-energy-page', locator: 'article 501, appendix II' }],
  evidence: {
    form: { tag: 'secondary', derived: 'isentropic form with k 1.4' },
    atmosphere: { tag: 'secondary' },
  },
  limits: [],
});
