import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import { arrheniusShift } from '../../mechanics/index.js';
import type { ActivationEnergy, MolarHeatCapacity, Temperature, Time } from '../../quantity/index.js';
import {
  gasConstant,
  mechanism,
  minimumTemperature,
  referenceTemperature,
  temperature,
  testedFrom,
  testedTo,
} from '../declared-inputs.js';
import { type CureMechanism, onlyTwoPart } from '../wait/cure-mechanism.js';
import { notBelowMinimum } from './minimum-temperature.js';
import { checkTestedSpan, leavesTestedSpan, type TestedSpan } from './tested-span.js';

export interface RemainingTimeInput extends TestedSpan {
  readonly requiredTime: Time;
  readonly creditedTime: Time;
  readonly temperature: Temperature;
  readonly activationEnergy: ActivationEnergy;
  readonly minimumTemperature: Temperature;
  readonly mechanism: CureMechanism;
  readonly gasConstant?: MolarHeatCapacity | undefined;
}

/**
 * Time still to wait at one constant temperature when part of the cure is done.
 *
 * $$t = \frac{\max(0,\ t_{req} - t_e)}{a_T}$$
 *
 * @param input.requiredTime         t_req, equivalent time needed at the reference temperature [s], > 0
 * @param input.creditedTime         t_e, equivalent time already gained [s], >= 0
 * @param input.referenceTemperature T_ref [K]
 * @param input.temperature          T, from now on [K], at least the minimum cure temperature
 * @param input.activationEnergy     E [J/mol], > 0
 * @param input.minimumTemperature   T_min [K]
 * @param input.mechanism            only a two-part reaction is shifted
 * @returns time still to wait [s]; 0 when nothing is missing
 * @throws CalculationError `invalid-input`; `outside-validity` for a moisture-cured system or below T_min
 * @see ASTM C1074 (equivalent age)
 */
export function remainingTime(input: RemainingTimeInput): Time {
  const { requiredTime, creditedTime, referenceTemperature, temperature } = input;
  const { activationEnergy, minimumTemperature, mechanism, gasConstant } = input;
  onlyTwoPart(mechanism);
  positive(requiredTime, 'requiredTime', 's');
  nonNegative(creditedTime, 'creditedTime', 's');
  checkTestedSpan(input);
  notBelowMinimum(temperature, minimumTemperature);
  const aT = arrheniusShift({ activationEnergy, referenceTemperature, temperature, gasConstant });
  const t = Math.max(0, requiredTime - creditedTime) / aT;
  finite(t, 'requiredTime', 's');
  return t as Time;
}

/** Whether the temperature leaves the span in which the maker's times were measured. */
export function remainingTimeLeavesTestedSpan(input: RemainingTimeInput): boolean {
  return leavesTestedSpan(input, input.temperature);
}

export const remainingTimeFormula = /* @__PURE__ */ formula<RemainingTimeInput, Time>({
  id: 'cure/remaining-time',
  title: 'Cure time still to wait',
  search: ['cure left', 'how long to wait'],
  compute: remainingTime,
  equation: {
    where: [{ symbol: 'a_T', kind: 'ratio', expression: 'exp(E / R * (1 / T_ref - 1 / T))' }],
    expression: 'max(0, t_req - t_e) / a_T',
  },
  inputs: {
    requiredTime: { symbol: 't_req', kind: 'time', name: 'equivalent time needed', sample: [3600, 604800] },
    creditedTime: { symbol: 't_e', kind: 'time', name: 'equivalent time gained', sample: [0, 400000] },
    referenceTemperature,
    temperature,
    activationEnergy: { symbol: 'E', kind: 'activation energy', name: 'activation energy', sample: [40e3, 80e3] },
    minimumTemperature,
    mechanism,
    testedFrom,
    testedTo,
    gasConstant,
  },
  output: { symbol: 't', kind: 'time', name: 'time still to wait' },
  sources: [{ key: 'astm-c1074', locator: 'equivalent age' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [
    { sort: 'stop', text: 'A moisture-cured system is never shifted by temperature.' },
    { sort: 'stop', text: 'Not below the minimum cure temperature, where the cure stalls.' },
    {
      sort: 'note',
      text: 'The temperature leaves the span in which the times were measured: the activation energy is extrapolated.',
      beyond: remainingTimeLeavesTestedSpan,
    },
  ],
});
