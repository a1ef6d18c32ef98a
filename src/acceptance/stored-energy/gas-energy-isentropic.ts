import { atMost, finite, formula, positive, refuse } from '../../formula/index.js';
import type { AbsolutePressure, Energy, Volume } from '../../quantity/index.js';
import { logRatio } from './log-ratio.js';

export interface GasEnergyIsentropicInput {
  readonly pressure: AbsolutePressure;
  readonly volume: Volume;
  readonly atmosphere: AbsolutePressure;
  readonly heatCapacityRatio?: number | undefined;
}

/**
 * Energy that a gas under pressure gives off when it expands to the atmosphere and takes no heat from outside.
 *
 * $$U = \frac{p_1 V}{k - 1} \left(1 - \left(\frac{p_a}{p_1}\right)^{(k - 1)/k}\right)$$
 *
 * @param input.pressure          p_1, absolute pressure of the gas [Pa], >= p_a
 * @param input.volume            V, volume of the gas [m3], > 0
 * @param input.atmosphere        p_a, absolute pressure outside [Pa], > 0
 * @param input.heatCapacityRatio k, ratio of the heat capacities, > 1; 1.4, air and nitrogen, when not given
 * @returns energy [J]
 * @throws CalculationError `invalid-input`
 * @remarks Absolute pressures: with gauge pressures the energy comes out too low. Test with liquid wherever that can be done.
 * @see ASME PCC-2, article 501, as quoted on a piping page
 */
export function gasEnergyIsentropic(input: GasEnergyIsentropicInput): Energy {
  const { pressure: p1, volume: V, atmosphere: pA, heatCapacityRatio: k = 1.4 } = input;
  positive(pA, 'atmosphere', 'Pa');
  positive(p1, 'pressure', 'Pa');
  atMost(pA, p1, 'the pressure of the gas', 'atmosphere', 'Pa');
  positive(V, 'volume', 'm3');
  if (!(Number.isFinite(k) && k > 1)) notAboveOne(k);
  // 1 - (p_a/p_1)^((k - 1)/k), without the loss of digits near the atmosphere.
  const share = -Math.expm1(((k - 1) / k) * logRatio(pA, p1));
  const U = ((p1 * V) / (k - 1)) * share;
  finite(U, 'energy of the gas', 'J');
  return U as Energy;
}

function notAboveOne(value: number): never {
  refuse({
    code: 'invalid-input',
    parameter: 'heatCapacityRatio',
    value,
    unit: '',
    constraint: 'must be a finite number above 1; the isothermal form is its limit at 1',
  });
}

export const gasEnergyIsentropicFormula = /* @__PURE__ */ formula<GasEnergyIsentropicInput, Energy>({
  id: 'acceptance/gas-energy-isentropic',
  title: 'Stored energy of a gas, isentropic',
  search: ['pneumatic test', 'brode'],
  compute: gasEnergyIsentropic,
  equation: { expression: 'p_1 * V / (k - 1) * (1 - (p_a / p_1)^((k - 1) / k))' },
  inputs: {
    pressure: { symbol: 'p_1', kind: 'absolute pressure', name: 'pressure of the gas', sample: [3e5, 2e7] },
    volume: { symbol: 'V', kind: 'volume', name: 'volume of the gas', sample: [0.01, 100] },
    atmosphere: { symbol: 'p_a', kind: 'absolute pressure', name: 'pressure outside', sample: [9e4, 1.05e5] },
    heatCapacityRatio: {
      symbol: 'k',
      kind: 'number',
      name: 'ratio of the heat capacities',
      sample: [1.1, 1.67],
      default: 1.4,
    },
  },
  output: { symbol: 'U', kind: 'energy', name: 'stored energy' },
  sources: [{ key: 'test-energy-page', locator: 'article 501, appendix II' }],
  evidence: {
    form: { tag: 'secondary', derived: 'quadrature of p dV over the expansion' },
    heatCapacityRatio: { tag: 'secondary', note: 'air and nitrogen' },
  },
  limits: [],
});
