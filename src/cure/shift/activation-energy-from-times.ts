import { finite, formula, positive, refuse } from '../../formula/index.js';
import { molarGasConstant } from '../../mechanics/index.js';
import type { ActivationEnergy, MolarHeatCapacity, Temperature, Time } from '../../quantity/index.js';
import { gasConstant } from '../declared-inputs.js';

export interface ActivationEnergyFromTimesInput {
  readonly firstTime: Time;
  readonly firstTemperature: Temperature;
  readonly secondTime: Time;
  readonly secondTemperature: Temperature;
  readonly gasConstant?: MolarHeatCapacity | undefined;
}

/**
 * Activation energy from the times that the same stage of cure took at two temperatures.
 *
 * $$E = \frac{R \ln(t_1/t_2)}{1/T_1 - 1/T_2}$$
 *
 * @param input.firstTime         t_1 [s], > 0
 * @param input.firstTemperature  T_1 [K], > 0
 * @param input.secondTime        t_2 [s], > 0
 * @param input.secondTemperature T_2 [K], > 0, not T_1
 * @param input.gasConstant       R [J/(mol K)], > 0
 * @returns activation energy [J/mol]
 * @throws CalculationError `invalid-input`; `outside-validity` when the hotter one did not take the shorter time
 * @remarks Both times must end at the same stage (gel, print-free, one conversion). Rounded times a few kelvin apart fix
 *   E poorly: 30 to 40 min becoming 20 to 25 min over 10 deltaF leaves 54 to 62 kJ/mol.
 * @see gel times of a selection guide, on a public web page
 */
export function activationEnergyFromTimes(input: ActivationEnergyFromTimesInput): ActivationEnergy {
  const { firstTime: t1, firstTemperature: T1, secondTime: t2, secondTemperature: T2 } = input;
  const { gasConstant: R = molarGasConstant } = input;
  positive(t1, 'firstTime', 's');
  positive(T1, 'firstTemperature', 'K');
  positive(t2, 'secondTime', 's');
  positive(T2, 'secondTemperature', 'K');
  positive(R, 'gasConstant', 'J/(mol K)');
  const E = (R * Math.log(t1 / t2) * T1 * T2) / (T2 - T1);
  if (!(E > 0)) {
    refuse({
      code: T1 === T2 ? 'invalid-input' : 'outside-validity',
      parameter: T1 === T2 ? 'secondTemperature' : 'secondTime',
      value: T1 === T2 ? T2 : t2,
      unit: T1 === T2 ? 'K' : 's',
      constraint:
        T1 === T2 ? 'must differ from the first temperature' : 'the hotter of the two must take the shorter time',
    });
  }
  finite(E, 'firstTime', 's');
  return E as ActivationEnergy;
}

export const activationEnergyFromTimesFormula = /* @__PURE__ */ formula<
  ActivationEnergyFromTimesInput,
  ActivationEnergy
>({
  id: 'cure/activation-energy-from-times',
  title: 'Activation energy from two times',
  search: ['arrhenius', 'two cure times'],
  compute: activationEnergyFromTimes,
  equation: { expression: 'R * log(t_1 / t_2) / (1 / T_1 - 1 / T_2)' },
  inputs: {
    firstTime: { symbol: 't_1', kind: 'time', name: 'time at the first temperature', sample: [1200, 36000] },
    firstTemperature: { symbol: 'T_1', kind: 'temperature', name: 'first temperature', sample: [278.15, 303.15] },
    secondTime: { symbol: 't_2', kind: 'time', name: 'time at the second temperature', sample: [300, 3600] },
    secondTemperature: { symbol: 'T_2', kind: 'temperature', name: 'second temperature', sample: [293.15, 333.15] },
    gasConstant,
  },
  output: { symbol: 'E', kind: 'activation energy', name: 'activation energy' },
  sources: [{ key: 'web-cure-examples', locator: 'gel times of a selection guide at two temperatures' }],
  evidence: { form: { tag: 'secondary', derived: 'two Arrhenius rates divided' } },
  limits: [{ sort: 'stop', text: 'The hotter of the two must take the shorter time.' }],
});
