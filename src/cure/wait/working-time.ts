import { finite, formula, positive } from '../../formula/index.js';
import { arrheniusShift } from '../../mechanics/index.js';
import type { ActivationEnergy, MolarHeatCapacity, Temperature, Time } from '../../quantity/index.js';
import {
  activationEnergy,
  gasConstant,
  highEnergy,
  lowEnergy,
  mechanism,
  referenceTemperature,
  temperature,
  testedFrom,
  testedTo,
  typicalEnergy,
} from '../declared-inputs.js';
import { checkTestedSpan, leavesTestedSpan, type TestedSpan } from '../shift/tested-span.js';
import { type CureMechanism, onlyTwoPart } from './cure-mechanism.js';
import { activationEnergyMissing, type EnergyChoice, energiesOf, extremes } from './energy-bounds.js';

export interface WorkingTimeInput extends TestedSpan, EnergyChoice {
  readonly time: Time;
  readonly temperature: Temperature;
  readonly mechanism: CureMechanism;
  readonly gasConstant?: MolarHeatCapacity | undefined;
}

export interface WorkingTime {
  readonly workingTime: Time;
  readonly governingEnergy: ActivationEnergy;
  readonly longest: Time;
}

/**
 * How long a mixed resin can be worked at the site's temperature, with or without the maker's activation energy.
 *
 * $$t = \min_E \frac{t_{ref}}{a_T(E)}$$
 *
 * @param input.time                 t_ref, the maker's working time at the reference temperature [s], > 0
 * @param input.referenceTemperature T_ref [K], > 0
 * @param input.temperature          T, the warmest that the resin meets: of the mix in the pot, of the pipe once it lies there [K]
 * @param input.activationEnergy     E from the maker; else the shortest of the three bounds is taken [J/mol]
 * @param input.mechanism            only a two-part reaction is shifted
 * @returns the working time, the energy that it goes by, and the longest that the bounds allow
 * @throws CalculationError `invalid-input`; `outside-validity` for a moisture-cured system
 * @remarks The figure belongs to the mass, start temperature and end point of the maker's test (`potLife` for the pot).
 *   Above the reference temperature the high energy governs, below it the low one.
 * @see ASTM C1074 (equivalent age)
 */
export function workingTime(input: WorkingTimeInput): WorkingTime {
  const { time, temperature, mechanism, referenceTemperature, gasConstant } = input;
  onlyTwoPart(mechanism);
  positive(time, 'time', 's');
  positive(temperature, 'temperature', 'K');
  checkTestedSpan(input);
  const { shortest, shortestBy, longest } = extremes(energiesOf(input), (energy) => {
    const activationEnergy = energy as ActivationEnergy;
    return time / arrheniusShift({ activationEnergy, referenceTemperature, temperature, gasConstant });
  });
  finite(longest, 'time', 's');
  return { workingTime: shortest as Time, governingEnergy: shortestBy as ActivationEnergy, longest: longest as Time };
}

/** Whether the temperature leaves the span in which the maker's times were measured. */
export function workingTimeLeavesTestedSpan(input: WorkingTimeInput): boolean {
  return leavesTestedSpan(input, input.temperature);
}

export const workingTimeFormula = /* @__PURE__ */ formula<WorkingTimeInput, WorkingTime>({
  id: 'cure/working-time',
  title: 'Working time at site temperature',
  search: ['open time', 'gel'],
  compute: workingTime,
  equation: {
    algorithm:
      "With the maker's activation energy that one value; without it the times of the low, the typical and the high energy. Each is t_ref / exp(E/R (1/T_ref - 1/T)); the shortest governs.",
    winner: {
      name: 'the activation energy that governs',
      equation: {
        where: [{ symbol: 'a_T', kind: 'ratio', expression: 'exp(E_gov / R * (1 / T_ref - 1 / T))' }],
        expression: 't_ref / a_T',
      },
    },
  },
  inputs: {
    time: { symbol: 't_ref', kind: 'time', name: 'working time at the reference temperature', sample: [20, 7200] },
    referenceTemperature,
    temperature,
    activationEnergy,
    lowEnergy,
    typicalEnergy,
    highEnergy,
    mechanism,
    testedFrom,
    testedTo,
    gasConstant,
  },
  output: {
    workingTime: { symbol: 't', kind: 'time', name: 'working time' },
    governingEnergy: { symbol: 'E_gov', kind: 'activation energy', name: 'activation energy that governs' },
    longest: { symbol: 't_long', kind: 'time', name: 'longest working time of the bounds' },
  },
  sources: [{ key: 'astm-c1074', locator: 'equivalent age' }],
  evidence: {
    form: { tag: 'secondary' },
    E_low: { tag: 'chosen' },
    E_typ: { tag: 'chosen' },
    E_high: { tag: 'chosen' },
  },
  limits: [
    { sort: 'stop', text: 'A moisture-cured system is never shifted by temperature.' },
    {
      sort: 'note',
      text: 'The temperature leaves the span in which the times were measured: the activation energy is extrapolated.',
      beyond: workingTimeLeavesTestedSpan,
    },
    {
      sort: 'note',
      text: "The maker's activation energy is missing: the shortest working time of 40, 50 and 60 kJ/mol is taken.",
      beyond: activationEnergyMissing,
    },
  ],
});
