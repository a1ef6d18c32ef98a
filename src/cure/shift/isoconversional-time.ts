import { finite, formula, positive, refuse } from '../../formula/index.js';
import { molarGasConstant } from '../../mechanics/index.js';
import type { ActivationEnergy, MolarHeatCapacity, Temperature, Time } from '../../quantity/index.js';
import { gasConstant } from '../declared-inputs.js';

export interface IsoconversionalTimeInput {
  readonly firstTime: Time;
  readonly firstTemperature: Temperature;
  readonly secondTime: Time;
  readonly secondTemperature: Temperature;
  readonly temperature: Temperature;
  readonly gasConstant?: MolarHeatCapacity | undefined;
}

export interface IsoconversionalTime {
  readonly time: Time;
  readonly activationEnergy: ActivationEnergy;
}

/**
 * Time to one fixed degree of cure at a third temperature, from the times to it at two.
 *
 * $$\ln t_\alpha(T) = \ln t_1 + \frac{E_\alpha}{R}\left(\frac{1}{T} - \frac{1}{T_1}\right), \qquad
 *   E_\alpha = \frac{R \ln(t_1/t_2)}{1/T_1 - 1/T_2}$$
 *
 * @param input.firstTime         t_1 [s], > 0
 * @param input.firstTemperature  T_1 [K], > 0
 * @param input.secondTime        t_2 [s], > 0
 * @param input.secondTemperature T_2 [K], > 0, not T_1
 * @param input.temperature       T [K], > 0
 * @param input.gasConstant       R [J/(mol K)], > 0; only the energy depends on it
 * @returns time at T [s], and the energy that the two points imply [J/mol]
 * @throws CalculationError `invalid-input`; `outside-validity` when the hotter one did not take the shorter time
 * @remarks Needs no kinetic law, only that the law is the same at all three temperatures.
 * @see an application page on epoxy adhesive, on a public web page
 */
export function isoconversionalTime(input: IsoconversionalTimeInput): IsoconversionalTime {
  const { firstTime: t1, firstTemperature: T1, secondTime: t2, secondTemperature: T2, temperature: T } = input;
  const { gasConstant: R = molarGasConstant } = input;
  positive(t1, 'firstTime', 's');
  positive(T1, 'firstTemperature', 'K');
  positive(t2, 'secondTime', 's');
  positive(T2, 'secondTemperature', 'K');
  positive(T, 'temperature', 'K');
  positive(R, 'gasConstant', 'J/(mol K)');
  const EoverR = (Math.log(t1 / t2) * T1 * T2) / (T2 - T1);
  if (!(EoverR > 0)) {
    refuse({
      code: T1 === T2 ? 'invalid-input' : 'outside-validity',
      parameter: T1 === T2 ? 'secondTemperature' : 'secondTime',
      value: T1 === T2 ? T2 : t2,
      unit: T1 === T2 ? 'K' : 's',
      constraint:
        T1 === T2 ? 'must differ from the first temperature' : 'the hotter of the two must take the shorter time',
    });
  }
  const time = t1 * Math.exp((EoverR * (T1 - T)) / (T * T1));
  positive(time, 'time', 's');
  finite(EoverR * R, 'firstTime', 's');
  return { time: time as Time, activationEnergy: (EoverR * R) as ActivationEnergy };
}

/** Whether the temperature lies outside the two that were measured. */
export function isoconversionalTimeExtrapolates(input: IsoconversionalTimeInput): boolean {
  const { firstTemperature: T1, secondTemperature: T2, temperature: T } = input;
  return T < Math.min(T1, T2) || T > Math.max(T1, T2);
}

export const isoconversionalTimeFormula = /* @__PURE__ */ formula<IsoconversionalTimeInput, IsoconversionalTime>({
  id: 'cure/isoconversional-time',
  title: 'Time to a fixed degree of cure from two measured times',
  search: ['arrhenius', 'two cure times'],
  compute: isoconversionalTime,
  equation: {
    where: [{ symbol: 'E_a', kind: 'activation energy', expression: 'R * log(t_1 / t_2) / (1 / T_1 - 1 / T_2)' }],
    expression: 't_1 * exp(E_a / R * (1 / T - 1 / T_1))',
  },
  inputs: {
    firstTime: { symbol: 't_1', kind: 'time', name: 'time at the first temperature', sample: [1200, 36000] },
    firstTemperature: { symbol: 'T_1', kind: 'temperature', name: 'first temperature', sample: [278.15, 293.15] },
    secondTime: { symbol: 't_2', kind: 'time', name: 'time at the second temperature', sample: [300, 3600] },
    secondTemperature: { symbol: 'T_2', kind: 'temperature', name: 'second temperature', sample: [303.15, 333.15] },
    temperature: { symbol: 'T', kind: 'temperature', name: 'temperature', sample: [273.15, 353.15] },
    gasConstant,
  },
  output: {
    time: { symbol: 't', kind: 'time', name: 'time at the temperature' },
    activationEnergy: { symbol: 'E', kind: 'activation energy', name: 'activation energy implied' },
  },
  sources: [{ key: 'web-cure-examples', locator: 'application page: 95 % cure at three temperatures' }],
  evidence: { form: { tag: 'secondary', derived: 'two Arrhenius times divided' } },
  limits: [
    { sort: 'stop', text: 'The hotter of the two must take the shorter time.' },
    {
      sort: 'note',
      text: 'The temperature lies outside the two that were measured: the energy is extrapolated.',
      beyond: isoconversionalTimeExtrapolates,
    },
  ],
});
