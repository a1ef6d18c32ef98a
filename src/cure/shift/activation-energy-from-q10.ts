import { finite, formula, positive, refuse } from '../../formula/index.js';
import { molarGasConstant } from '../../mechanics/index.js';
import type {
  ActivationEnergy,
  MolarHeatCapacity,
  Ratio,
  Temperature,
  TemperatureDifference,
} from '../../quantity/index.js';
import { gasConstant } from '../declared-inputs.js';

export interface ActivationEnergyFromQ10Input {
  readonly factor: Ratio;
  readonly temperature: Temperature;
  readonly step?: TemperatureDifference | undefined;
  readonly gasConstant?: MolarHeatCapacity | undefined;
}

/**
 * Activation energy that a rule such as "time halves for every 10 K" implies between two temperatures.
 *
 * $$E = R \ln Q\ \frac{T (T + \Delta T)}{\Delta T}$$
 *
 * @param input.factor      Q, factor on the rate over the step, > 1
 * @param input.temperature T, the lower of the two [K], > 0
 * @param input.step        dT, 10 K when absent, > 0
 * @param input.gasConstant R [J/(mol K)], > 0
 * @returns activation energy [J/mol]
 * @throws CalculationError `invalid-input`
 * @remarks Halving per 10 K means 46.2 kJ/mol from 5 to 15 degC and 52.9 from 25 to 35 degC: the rule is not one E.
 * @see a rule of resin makers, on public web pages
 */
export function activationEnergyFromQ10(input: ActivationEnergyFromQ10Input): ActivationEnergy {
  const { factor: Q, temperature: T, step = 10 as TemperatureDifference, gasConstant: R = molarGasConstant } = input;
  positive(Q, 'factor', '');
  positive(T, 'temperature', 'K');
  positive(step, 'step', 'K');
  positive(R, 'gasConstant', 'J/(mol K)');
  if (!(Q > 1)) {
    refuse({
      code: 'invalid-input',
      parameter: 'factor',
      value: Q,
      unit: '',
      constraint: 'must be above 1: a reaction that heat does not speed up has no activation energy',
    });
  }
  const E = (R * Math.log(Q) * (T * (T + step))) / step;
  finite(E, 'temperature', 'K');
  return E as ActivationEnergy;
}

export const activationEnergyFromQ10Formula = /* @__PURE__ */ formula<ActivationEnergyFromQ10Input, ActivationEnergy>({
  id: 'cure/activation-energy-from-q10',
  title: 'Activation energy implied by a factor per temperature step',
  search: ['arrhenius', 'rule of ten degrees'],
  compute: activationEnergyFromQ10,
  equation: { expression: 'R * log(Q) * T * (T + dT) / dT' },
  inputs: {
    factor: { symbol: 'Q', kind: 'ratio', name: 'factor on the rate', sample: [1.3, 4] },
    temperature: { symbol: 'T', kind: 'temperature', name: 'lower temperature', sample: [273.15, 333.15] },
    step: {
      symbol: 'dT',
      kind: 'temperature difference',
      name: 'temperature step',
      sample: [5, 20],
      default: 10,
    },
    gasConstant,
  },
  output: { symbol: 'E', kind: 'activation energy', name: 'activation energy' },
  sources: [{ key: 'web-cure-examples', locator: 'pot life that halves for every 18 degF' }],
  evidence: { form: { tag: 'secondary', derived: 'ratio of two Arrhenius rates' }, dT: { tag: 'practice' } },
  limits: [],
});
