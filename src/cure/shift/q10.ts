import { finite, formula, positive } from '../../formula/index.js';
import { molarGasConstant } from '../../mechanics/index.js';
import type {
  ActivationEnergy,
  MolarHeatCapacity,
  Ratio,
  Temperature,
  TemperatureDifference,
} from '../../quantity/index.js';
import { gasConstant } from '../declared-inputs.js';

export interface Q10Input {
  readonly activationEnergy: ActivationEnergy;
  readonly temperature: Temperature;
  readonly step?: TemperatureDifference | undefined;
  readonly gasConstant?: MolarHeatCapacity | undefined;
}

/**
 * How much faster a reaction runs one temperature step, commonly 10 K, above a temperature.
 *
 * $$Q = \exp\!\left[\frac{E}{R}\left(\frac{1}{T} - \frac{1}{T + \Delta T}\right)\right]$$
 *
 * @param input.activationEnergy E [J/mol], > 0
 * @param input.temperature      T, the lower of the two [K], > 0
 * @param input.step             dT, 10 K when absent, > 0
 * @param input.gasConstant      R [J/(mol K)], > 0
 * @returns factor on the rate
 * @throws CalculationError `invalid-input`
 * @remarks Q10 falls as temperature rises, so a constant "twice as fast for every 10 K" is no Arrhenius law: carried
 *   down from 25 to 5 degC it gives 4.0 times the time where E = 52.9 kJ/mol gives 4.65, too short a wait in the cold.
 * @see a rule of resin makers, on public web pages
 */
export function q10(input: Q10Input): Ratio {
  const { activationEnergy: E, temperature: T, step = 10 as TemperatureDifference } = input;
  const { gasConstant: R = molarGasConstant } = input;
  positive(E, 'activationEnergy', 'J/mol');
  positive(T, 'temperature', 'K');
  positive(step, 'step', 'K');
  positive(R, 'gasConstant', 'J/(mol K)');
  const Q = Math.exp((E * step) / (R * T * (T + step)));
  finite(Q, 'factor', '');
  return Q as Ratio;
}

export const q10Formula = /* @__PURE__ */ formula<Q10Input, Ratio>({
  id: 'cure/q10',
  title: 'Factor on the rate for a temperature step',
  search: ['rule of ten degrees', 'doubles every 10 degrees'],
  compute: q10,
  equation: { expression: 'exp(E / R * (1 / T - 1 / (T + dT)))' },
  inputs: {
    activationEnergy: { symbol: 'E', kind: 'activation energy', name: 'activation energy', sample: [30e3, 90e3] },
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
  output: { symbol: 'Q', kind: 'ratio', name: 'factor on the rate' },
  sources: [{ key: 'web-cure-examples', locator: 'pot life that halves for every 18 degF' }],
  evidence: { form: { tag: 'secondary', derived: 'ratio of two Arrhenius rates' }, dT: { tag: 'practice' } },
  limits: [],
});
