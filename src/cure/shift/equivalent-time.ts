import { finite, formula, positive } from '../../formula/index.js';
import { arrheniusShift } from '../../mechanics/index.js';
import type { ActivationEnergy, MolarHeatCapacity, Temperature, Time } from '../../quantity/index.js';
import {
  gasConstant,
  mechanism,
  minimumTemperature,
  referenceTemperature,
  testedFrom,
  testedTo,
} from '../declared-inputs.js';
import { type CureMechanism, onlyTwoPart } from '../wait/cure-mechanism.js';
import { checkSteps, type TemperatureStep } from './temperature-step.js';
import { checkTestedSpan, leavesTestedSpan, type TestedSpan } from './tested-span.js';

export interface EquivalentTimeInput extends TestedSpan {
  readonly steps: readonly TemperatureStep[];
  readonly activationEnergy: ActivationEnergy;
  readonly minimumTemperature: Temperature;
  readonly mechanism: CureMechanism;
  readonly gasConstant?: MolarHeatCapacity | undefined;
}

export interface EquivalentTime {
  readonly equivalentTime: Time;
  readonly creditedTime: Time;
  readonly uncreditedTime: Time;
}

/**
 * Time at the reference temperature that cures as far as a temperature history did.
 *
 * $$t_e = \sum_{T_i \ge T_{min}} \exp\!\left[\frac{E}{R}\left(\frac{1}{T_{ref}} - \frac{1}{T_i}\right)\right] \Delta t_i$$
 *
 * @param input.steps                stretches of constant temperature, in order; the temperature of the resin, not the air
 * @param input.referenceTemperature T_ref [K], > 0
 * @param input.activationEnergy     E [J/mol], > 0
 * @param input.minimumTemperature   T_min [K]: a step below it counts nothing
 * @param input.mechanism            only a two-part reaction is shifted
 * @returns equivalent time, clock time that was credited, clock time below T_min that was not [s]
 * @throws CalculationError `invalid-input`; `outside-validity` for a moisture-cured system
 * @remarks Never average the temperature first: the shift is convex, so the average under-counts a swing. No credit is
 *   due either after the resin has turned to glass (`requiredCureTemperature`).
 * @see ASTM C1074 (equivalent age)
 */
export function equivalentTime(input: EquivalentTimeInput): EquivalentTime {
  const { steps, referenceTemperature, activationEnergy, minimumTemperature, mechanism, gasConstant } = input;
  onlyTwoPart(mechanism);
  checkSteps(steps);
  checkTestedSpan(input);
  positive(minimumTemperature, 'minimumTemperature', 'K');
  positive(activationEnergy, 'activationEnergy', 'J/mol');
  let [equivalent, credited, uncredited] = [0, 0, 0];
  for (const { duration, temperature } of steps) {
    if (temperature < minimumTemperature) {
      uncredited += duration;
      continue;
    }
    equivalent += duration * arrheniusShift({ activationEnergy, referenceTemperature, temperature, gasConstant });
    credited += duration;
  }
  finite(equivalent, 'equivalentTime', 's');
  finite(credited + uncredited, 'steps', 's');
  return {
    equivalentTime: equivalent as Time,
    creditedTime: credited as Time,
    uncreditedTime: uncredited as Time,
  };
}

/** Whether a credited step leaves the span in which the maker's times were measured. */
export function equivalentTimeLeavesTestedSpan(input: EquivalentTimeInput): boolean {
  return input.steps.some(
    ({ temperature }) => temperature >= input.minimumTemperature && leavesTestedSpan(input, temperature),
  );
}

/** Whether part of the history is too cold to count. */
export function equivalentTimeHasUncreditedTime({ steps, minimumTemperature }: EquivalentTimeInput): boolean {
  return steps.some(({ duration, temperature }) => duration > 0 && temperature < minimumTemperature);
}

export const equivalentTimeFormula = /* @__PURE__ */ formula<EquivalentTimeInput, EquivalentTime>({
  id: 'cure/equivalent-time',
  title: 'Equivalent cure time over a temperature history',
  search: ['maturity', 'arrhenius'],
  compute: equivalentTime,
  equation: {
    algorithm:
      'Sum over the steps of duration times exp(E/R (1/T_ref - 1/T)); a step below the minimum cure temperature counts nothing.',
    winner: {
      name: 'all steps',
      sums: {
        list: 'steps',
        columns: { duration: 'd', temperature: 'T' },
        when: 'T >= T_min',
        where: [
          { symbol: 'a_T', kind: 'ratio', expression: 'exp(E / R * (1 / T_ref - 1 / T))' },
          { symbol: 'g', kind: 'time', expression: 'd * a_T' },
        ],
        sums: [{ symbol: 'g_all', kind: 'time', of: 'g', name: 'equivalent time of the steps' }],
      },
      equation: { expression: 'g_all' },
    },
  },
  inputs: {
    steps: {
      symbol: 'steps',
      kind: 'list',
      name: 'temperature history',
      columns: { duration: 'time', temperature: 'temperature' },
    },
    referenceTemperature,
    activationEnergy: { symbol: 'E', kind: 'activation energy', name: 'activation energy', sample: [40e3, 80e3] },
    minimumTemperature,
    mechanism,
    testedFrom,
    testedTo,
    gasConstant,
  },
  output: {
    equivalentTime: { symbol: 't_e', kind: 'time', name: 'equivalent time at the reference temperature' },
    creditedTime: { symbol: 't_c', kind: 'time', name: 'clock time that counts' },
    uncreditedTime: { symbol: 't_u', kind: 'time', name: 'clock time below the minimum, not counted' },
  },
  sources: [{ key: 'astm-c1074', locator: 'equivalent age' }],
  evidence: { form: { tag: 'secondary' }, T_min: { tag: 'practice' } },
  limits: [
    { sort: 'stop', text: 'A moisture-cured system is never shifted by temperature.' },
    {
      sort: 'note',
      text: 'A step leaves the span in which the times were measured: the activation energy is extrapolated.',
      beyond: equivalentTimeLeavesTestedSpan,
    },
    {
      sort: 'note',
      text: 'Part of the history is below the minimum cure temperature and counts nothing.',
      beyond: equivalentTimeHasUncreditedTime,
    },
  ],
});
