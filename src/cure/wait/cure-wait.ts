import { finite, formula, positive } from '../../formula/index.js';
import { arrheniusShift } from '../../mechanics/index.js';
import type { ActivationEnergy, MolarHeatCapacity, Temperature, Time } from '../../quantity/index.js';
import {
  activationEnergy,
  gasConstant,
  highEnergy,
  lowEnergy,
  mechanism,
  minimumTemperature,
  referenceTemperature,
  temperature,
  testedFrom,
  testedTo,
  typicalEnergy,
} from '../declared-inputs.js';
import { notBelowMinimum } from '../shift/minimum-temperature.js';
import { checkTestedSpan, leavesTestedSpan, type TestedSpan } from '../shift/tested-span.js';
import { type CureMechanism, onlyTwoPart } from './cure-mechanism.js';
import { activationEnergyMissing, type EnergyChoice, energiesOf, extremes } from './energy-bounds.js';

export interface CureWaitInput extends TestedSpan, EnergyChoice {
  readonly time: Time;
  readonly temperature: Temperature;
  readonly minimumTemperature: Temperature;
  readonly mechanism: CureMechanism;
  readonly gasConstant?: MolarHeatCapacity | undefined;
}

export interface CureWait {
  readonly wait: Time;
  readonly governingEnergy: ActivationEnergy;
  readonly shortest: Time;
}

/**
 * How long to wait for a stage of cure at one temperature, with or without the maker's activation energy.
 *
 * $$t = \max_E \frac{t_{ref}}{a_T(E)}$$
 *
 * @param input.time                 t_ref, the maker's time to this stage at the reference temperature [s], > 0
 * @param input.referenceTemperature T_ref [K], > 0
 * @param input.temperature          T, of the steel and the resin, constant [K], at least the minimum
 * @param input.minimumTemperature   T_min [K]
 * @param input.activationEnergy     E from the maker; else the longest wait of the three bounds is taken [J/mol]
 * @param input.mechanism            only a two-part reaction is shifted
 * @returns the wait, the energy that it goes by, and the shortest wait that the bounds allow
 * @throws CalculationError `invalid-input`; `outside-validity` for a moisture-cured system or below T_min
 * @remarks Time alone releases no hold point: the stage names the print, hardness or witness that does (`cureStages`).
 *   Above the reference temperature the low energy governs, below it the high one.
 * @see ASTM C1074 (equivalent age)
 */
export function cureWait(input: CureWaitInput): CureWait {
  const { time, temperature, minimumTemperature, mechanism, referenceTemperature, gasConstant } = input;
  onlyTwoPart(mechanism);
  positive(time, 'time', 's');
  checkTestedSpan(input);
  notBelowMinimum(temperature, minimumTemperature);
  const { longest, longestBy, shortest } = extremes(energiesOf(input), (energy) => {
    const activationEnergy = energy as ActivationEnergy;
    return time / arrheniusShift({ activationEnergy, referenceTemperature, temperature, gasConstant });
  });
  finite(longest, 'time', 's');
  return { wait: longest as Time, governingEnergy: longestBy as ActivationEnergy, shortest: shortest as Time };
}

/** Whether the temperature leaves the span in which the maker's times were measured. */
export function cureWaitLeavesTestedSpan(input: CureWaitInput): boolean {
  return leavesTestedSpan(input, input.temperature);
}

export const cureWaitFormula = /* @__PURE__ */ formula<CureWaitInput, CureWait>({
  id: 'cure/cure-wait',
  title: 'Wait for a stage of cure at constant temperature',
  search: ['cure time', 'back in service', 'cold weather'],
  compute: cureWait,
  equation: {
    algorithm:
      "With the maker's activation energy that one value; without it the times of the low, the typical and the high energy. Each is t_ref / exp(E/R (1/T_ref - 1/T)); the longest governs.",
    winner: {
      name: 'the activation energy that governs',
      equation: {
        where: [{ symbol: 'a_T', kind: 'ratio', expression: 'exp(E_gov / R * (1 / T_ref - 1 / T))' }],
        expression: 't_ref / a_T',
      },
    },
  },
  inputs: {
    time: { symbol: 't_ref', kind: 'time', name: 'time at the reference temperature', sample: [900, 604800] },
    referenceTemperature,
    temperature,
    minimumTemperature,
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
    wait: { symbol: 't', kind: 'time', name: 'wait' },
    governingEnergy: { symbol: 'E_gov', kind: 'activation energy', name: 'activation energy that governs' },
    shortest: { symbol: 't_short', kind: 'time', name: 'shortest wait of the bounds' },
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
    { sort: 'stop', text: 'Not below the minimum cure temperature, where the cure stalls.' },
    {
      sort: 'note',
      text: 'The temperature leaves the span in which the times were measured: the activation energy is extrapolated.',
      beyond: cureWaitLeavesTestedSpan,
    },
    {
      sort: 'note',
      text: "The maker's activation energy is missing: the longest wait of 40, 50 and 60 kJ/mol is taken.",
      beyond: activationEnergyMissing,
    },
  ],
});
