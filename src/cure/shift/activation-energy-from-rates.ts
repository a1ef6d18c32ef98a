import { finite, formula, positive, refuse } from '../../formula/index.js';
import { molarGasConstant } from '../../mechanics/index.js';
import type { ActivationEnergy, MolarHeatCapacity, RateConstant, Temperature } from '../../quantity/index.js';
import { gasConstant } from '../declared-inputs.js';

export interface ActivationEnergyFromRatesInput {
  readonly firstRate: RateConstant;
  readonly firstTemperature: Temperature;
  readonly secondRate: RateConstant;
  readonly secondTemperature: Temperature;
  readonly gasConstant?: MolarHeatCapacity | undefined;
}

/**
 * Activation energy from the rates of one reaction at two temperatures.
 *
 * $$E = \frac{R \ln(k_2/k_1)}{1/T_1 - 1/T_2}$$
 *
 * @param input.firstRate         k_1 [1/s], > 0
 * @param input.firstTemperature  T_1 [K], > 0
 * @param input.secondRate        k_2 [1/s], > 0
 * @param input.secondTemperature T_2 [K], > 0, not T_1
 * @param input.gasConstant       R [J/(mol K)], > 0
 * @returns activation energy [J/mol]
 * @throws CalculationError `invalid-input`; `outside-validity` when the hotter one is not the faster
 * @remarks Several worked answers on public pages get this arithmetic wrong by 1 to 9 per cent; they stand as errata.
 * @see worked answers on public web pages
 */
export function activationEnergyFromRates(input: ActivationEnergyFromRatesInput): ActivationEnergy {
  const { firstRate: k1, firstTemperature: T1, secondRate: k2, secondTemperature: T2 } = input;
  const { gasConstant: R = molarGasConstant } = input;
  positive(k1, 'firstRate', '1/s');
  positive(T1, 'firstTemperature', 'K');
  positive(k2, 'secondRate', '1/s');
  positive(T2, 'secondTemperature', 'K');
  positive(R, 'gasConstant', 'J/(mol K)');
  const E = (R * Math.log(k2 / k1) * T1 * T2) / (T2 - T1);
  if (!(E > 0)) {
    refuse({
      code: T1 === T2 ? 'invalid-input' : 'outside-validity',
      parameter: T1 === T2 ? 'secondTemperature' : 'secondRate',
      value: T1 === T2 ? T2 : k2,
      unit: T1 === T2 ? 'K' : '1/s',
      constraint: T1 === T2 ? 'must differ from the first temperature' : 'the hotter of the two must be the faster',
    });
  }
  finite(E, 'secondRate', '1/s');
  return E as ActivationEnergy;
}

export const activationEnergyFromRatesFormula = /* @__PURE__ */ formula<
  ActivationEnergyFromRatesInput,
  ActivationEnergy
>({
  id: 'cure/activation-energy-from-rates',
  title: 'Activation energy from two rates',
  search: ['arrhenius'],
  compute: activationEnergyFromRates,
  equation: { expression: 'R * log(k_2 / k_1) / (1 / T_1 - 1 / T_2)' },
  inputs: {
    firstRate: { symbol: 'k_1', kind: 'rate constant', name: 'rate at the first temperature', sample: [1e-6, 1e-4] },
    firstTemperature: { symbol: 'T_1', kind: 'temperature', name: 'first temperature', sample: [278.15, 303.15] },
    secondRate: { symbol: 'k_2', kind: 'rate constant', name: 'rate at the second temperature', sample: [5e-5, 1e-2] },
    secondTemperature: { symbol: 'T_2', kind: 'temperature', name: 'second temperature', sample: [293.15, 333.15] },
    gasConstant,
  },
  output: { symbol: 'E', kind: 'activation energy', name: 'activation energy' },
  sources: [{ key: 'web-cure-examples', locator: 'rate that doubles from 298 to 308 K' }],
  evidence: { form: { tag: 'secondary', derived: 'two Arrhenius rates divided' } },
  limits: [{ sort: 'stop', text: 'The hotter of the two must be the faster.' }],
});
