import { finite, formula, positive } from '../../formula/index.js';
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

export interface TimeAtTemperatureInput extends TestedSpan {
  readonly time: Time;
  readonly temperature: Temperature;
  readonly activationEnergy: ActivationEnergy;
  readonly minimumTemperature: Temperature;
  readonly mechanism: CureMechanism;
  readonly gasConstant?: MolarHeatCapacity | undefined;
}

/**
 * Time at one constant temperature that cures as far as a stated time does at its reference temperature; also the time
 * needed to reach an equivalent time.
 *
 * $$t = \frac{t_{ref}}{a_T}, \qquad a_T = \exp\!\left[\frac{E}{R}\left(\frac{1}{T_{ref}} - \frac{1}{T}\right)\right]$$
 *
 * @param input.time                 t_ref, time at the reference temperature [s], >= 0
 * @param input.referenceTemperature T_ref [K], > 0
 * @param input.temperature          T [K], at least the minimum cure temperature
 * @param input.activationEnergy     E [J/mol], > 0
 * @param input.minimumTemperature   T_min, lowest temperature at which the maker lets it cure [K]
 * @param input.mechanism            only a two-part reaction is shifted
 * @param input.testedFrom           lowest temperature at which times were measured [K]
 * @param input.testedTo             highest temperature at which times were measured [K]
 * @returns time at T [s]
 * @throws CalculationError `invalid-input`; `outside-validity` for a moisture-cured system or below T_min
 * @remarks Assumes one activation energy up to the stage in question and no stall: a resin whose glass transition
 *   reaches the cure temperature stops, whatever the clock says (`requiredCureTemperature`).
 * @see ASTM C1074 (equivalent age)
 */
export function timeAtTemperature(input: TimeAtTemperatureInput): Time {
  const { time, referenceTemperature, temperature, activationEnergy, minimumTemperature, mechanism, gasConstant } =
    input;
  onlyTwoPart(mechanism);
  positive(time, 'time', 's');
  checkTestedSpan(input);
  notBelowMinimum(temperature, minimumTemperature);
  const t = time / arrheniusShift({ activationEnergy, referenceTemperature, temperature, gasConstant });
  finite(t, 'time', 's');
  return t as Time;
}

/** Whether the temperature leaves the span in which the maker's times were measured. */
export function timeAtTemperatureLeavesTestedSpan(input: TimeAtTemperatureInput): boolean {
  return leavesTestedSpan(input, input.temperature);
}

export const timeAtTemperatureFormula = /* @__PURE__ */ formula<TimeAtTemperatureInput, Time>({
  id: 'cure/time-at-temperature',
  title: 'Cure time at another temperature',
  search: ['arrhenius', 'cold weather'],
  compute: timeAtTemperature,
  equation: {
    where: [{ symbol: 'a_T', kind: 'ratio', expression: 'exp(E / R * (1 / T_ref - 1 / T))' }],
    expression: 't_ref / a_T',
  },
  inputs: {
    time: { symbol: 't_ref', kind: 'time', name: 'time at the reference temperature', sample: [300, 604800] },
    referenceTemperature,
    temperature,
    activationEnergy: { symbol: 'E', kind: 'activation energy', name: 'activation energy', sample: [40e3, 80e3] },
    minimumTemperature,
    mechanism,
    testedFrom,
    testedTo,
    gasConstant,
  },
  output: { symbol: 't', kind: 'time', name: 'time at the temperature' },
  sources: [{ key: 'astm-c1074', locator: 'equivalent age' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [
    { sort: 'stop', text: 'A moisture-cured system is never shifted by temperature.' },
    { sort: 'stop', text: 'Not below the minimum cure temperature, where the cure stalls.' },
    {
      sort: 'note',
      text: 'The temperature leaves the span in which the times were measured: the activation energy is extrapolated.',
      beyond: timeAtTemperatureLeavesTestedSpan,
    },
  ],
});
