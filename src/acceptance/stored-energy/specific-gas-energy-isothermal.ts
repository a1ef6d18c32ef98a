import { atMost, finite, formula, positive } from '../../formula/index.js';
import type { AbsolutePressure, SpecificEnergy, SpecificHeat, Temperature } from '../../quantity/index.js';
import { logRatio } from './log-ratio.js';

export interface SpecificGasEnergyIsothermalInput {
  readonly gasConstant: SpecificHeat;
  readonly temperature: Temperature;
  readonly pressure: AbsolutePressure;
  readonly atmosphere: AbsolutePressure;
}

/**
 * Work that each kilogram of a gas under pressure can give while it expands to the atmosphere at one temperature.
 *
 * $$a = R_g T \left(\ln \frac{p_1}{p_a} - 1 + \frac{p_a}{p_1}\right)$$
 *
 * @param input.gasConstant R_g, gas constant of this gas [J/(kg K)], > 0
 * @param input.temperature T [K], > 0
 * @param input.pressure    p_1, absolute pressure of the gas [Pa], >= p_a
 * @param input.atmosphere  p_a, absolute pressure outside [Pa], > 0
 * @returns energy per mass [J/kg]
 * @throws CalculationError `invalid-input`
 * @see an answer on compressed air in a web forum
 */
export function specificGasEnergyIsothermal(input: SpecificGasEnergyIsothermalInput): SpecificEnergy {
  const { gasConstant: Rg, temperature: T, pressure: p1, atmosphere: pA } = input;
  positive(Rg, 'gasConstant', 'J/(kg K)');
  positive(T, 'temperature', 'K');
  positive(pA, 'atmosphere', 'Pa');
  positive(p1, 'pressure', 'Pa');
  atMost(pA, p1, 'the pressure of the gas', 'atmosphere', 'Pa');
  const x = (p1 - pA) / p1;
  const a = Rg * T * (logRatio(p1, pA) - x);
  finite(a, 'energy of the gas', 'J/kg');
  return a as SpecificEnergy;
}

export const specificGasEnergyIsothermalFormula = /* @__PURE__ */ formula<
  SpecificGasEnergyIsothermalInput,
  SpecificEnergy
>({
  id: 'acceptance/specific-gas-energy-isothermal',
  title: 'Stored energy of a kilogram of gas, isothermal',
  compute: specificGasEnergyIsothermal,
  equation: { expression: 'R_g * T * (log(p_1 / p_a) - 1 + p_a / p_1)' },
  inputs: {
    gasConstant: { symbol: 'R_g', kind: 'specific heat', name: 'gas constant of this gas', sample: [180, 520] },
    temperature: { symbol: 'T', kind: 'temperature', name: 'temperature', sample: [260, 330] },
    pressure: { symbol: 'p_1', kind: 'absolute pressure', name: 'pressure of the gas', sample: [3e5, 2e7] },
    atmosphere: { symbol: 'p_a', kind: 'absolute pressure', name: 'pressure outside', sample: [9e4, 1.05e5] },
  },
  output: { symbol: 'a', kind: 'specific energy', name: 'available energy per mass' },
  sources: [{ key: 'compressed-air-answer', locator: 'available energy of compressed air' }],
  evidence: { form: { tag: 'secondary', derived: 'quadrature of (p - p_a) dV over the expansion' } },
  limits: [],
});
