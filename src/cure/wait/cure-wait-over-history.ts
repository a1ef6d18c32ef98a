import { formula, positive, refuse } from '../../formula/index.js';
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
  testedFrom,
  testedTo,
  typicalEnergy,
} from '../declared-inputs.js';
import { checkSteps, type TemperatureStep } from '../shift/temperature-step.js';
import { checkTestedSpan, leavesTestedSpan, type TestedSpan } from '../shift/tested-span.js';
import { type CureMechanism, onlyTwoPart } from './cure-mechanism.js';
import { activationEnergyMissing, type EnergyChoice, energiesOf, extremes } from './energy-bounds.js';

export interface CureWaitOverHistoryInput extends TestedSpan, EnergyChoice {
  readonly steps: readonly TemperatureStep[];
  readonly requiredTime: Time;
  readonly minimumTemperature: Temperature;
  readonly mechanism: CureMechanism;
  readonly gasConstant?: MolarHeatCapacity | undefined;
}

export interface CureWaitOverHistory {
  readonly wait: Time;
  readonly governingEnergy: ActivationEnergy;
  readonly shortest: Time;
  readonly step: number;
}

/**
 * When a measured or forecast temperature history reaches the cure that a stated time gives at its reference temperature.
 *
 * $$\int_0^{t} a_T(T(\tau))\,[T(\tau) \ge T_{min}]\, d\tau = t_{req}$$
 *
 * @param input.steps                stretches of constant temperature from the end of mixing on, in order
 * @param input.requiredTime         t_req, the maker's time to this stage at the reference temperature [s], > 0
 * @param input.referenceTemperature T_ref [K], > 0
 * @param input.minimumTemperature   T_min [K]: a step below it counts nothing
 * @param input.activationEnergy     E from the maker; else the latest of the three bounds is taken [J/mol]
 * @param input.mechanism            only a two-part reaction is shifted
 * @returns clock time from the start, the energy that it goes by, the earliest that the bounds allow, and the number of the
 *   step in which it falls, counted from 1
 * @throws CalculationError `invalid-input`; `outside-validity` for a moisture-cured system; `no-solution` when the
 *   history ends before
 * @see ASTM C1074 (equivalent age)
 */
export function cureWaitOverHistory(input: CureWaitOverHistoryInput): CureWaitOverHistory {
  const { steps, requiredTime, minimumTemperature, mechanism, referenceTemperature, gasConstant } = input;
  onlyTwoPart(mechanism);
  checkSteps(steps);
  positive(requiredTime, 'requiredTime', 's');
  positive(minimumTemperature, 'minimumTemperature', 'K');
  checkTestedSpan(input);
  const { longest, longestBy, shortest } = extremes(energiesOf(input), (energy) => {
    const activationEnergy = energy as ActivationEnergy;
    let [clock, gained] = [0, 0];
    for (const { duration, temperature } of steps) {
      if (temperature >= minimumTemperature) {
        const aT = arrheniusShift({ activationEnergy, referenceTemperature, temperature, gasConstant });
        if (gained + duration * aT >= requiredTime) return clock + (requiredTime - gained) / aT;
        gained += duration * aT;
      }
      clock += duration;
    }
    return notReached(gained, requiredTime);
  });
  return {
    wait: longest as Time,
    governingEnergy: longestBy as ActivationEnergy,
    shortest: shortest as Time,
    step: stepAt(steps, longest),
  };
}

function notReached(gained: number, requiredTime: number): never {
  refuse({
    code: 'no-solution',
    parameter: 'steps',
    value: gained,
    unit: 's',
    constraint:
      'the history must reach an equivalent time of {limit} and ends before; make it longer, or heat the pipe',
    limit: requiredTime,
  });
}

/** Number, from 1, of the step that holds a clock time. */
function stepAt(steps: readonly TemperatureStep[], clock: number): number {
  let end = 0;
  for (const [index, { duration }] of steps.entries()) {
    end += duration;
    if (clock <= end) return index + 1;
  }
  return steps.length;
}

/** Whether a credited step leaves the span in which the maker's times were measured. */
export function cureWaitOverHistoryLeavesTestedSpan(input: CureWaitOverHistoryInput): boolean {
  return input.steps.some(
    ({ temperature }) => temperature >= input.minimumTemperature && leavesTestedSpan(input, temperature),
  );
}

/** Whether part of the history is too cold to count. */
export function cureWaitOverHistoryHasUncreditedTime({ steps, minimumTemperature }: CureWaitOverHistoryInput): boolean {
  return steps.some(({ duration, temperature }) => duration > 0 && temperature < minimumTemperature);
}

export const cureWaitOverHistoryFormula = /* @__PURE__ */ formula<CureWaitOverHistoryInput, CureWaitOverHistory>({
  id: 'cure/cure-wait-over-history',
  title: 'Wait for a stage of cure over a temperature history',
  search: ['cure time', 'cold night', 'maturity', 'back in service'],
  compute: cureWaitOverHistory,
  equation: {
    algorithm:
      'Sum duration times exp(E/R (1/T_ref - 1/T)) step by step until the required time is reached; divide what is missing by the factor of that step; the latest of the activation energies governs.',
    winner: {
      name: 'the step in which it falls',
      sums: {
        list: 'steps',
        columns: { duration: 'd', temperature: 'T' },
        last: 'step',
        when: 'T >= T_min',
        where: [
          { symbol: 'a_T', kind: 'ratio', expression: 'exp(E_gov / R * (1 / T_ref - 1 / T))' },
          { symbol: 'g', kind: 'time', expression: 'd * a_T' },
        ],
        sums: [
          { symbol: 't_0', kind: 'time', of: 'd', name: 'clock time of the steps before' },
          { symbol: 'g_0', kind: 'time', of: 'g', name: 'equivalent time gained in them' },
        ],
      },
      equation: { expression: 't_0 + (t_req - g_0) / a_T' },
    },
  },
  inputs: {
    steps: {
      symbol: 'steps',
      kind: 'list',
      name: 'temperature history',
      columns: { duration: 'time', temperature: 'temperature' },
    },
    requiredTime: { symbol: 't_req', kind: 'time', name: 'equivalent time needed', sample: [3600, 604800] },
    referenceTemperature,
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
    step: { symbol: 'i', kind: 'count', name: 'step in which it falls' },
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
      text: 'A step leaves the span in which the times were measured: the activation energy is extrapolated.',
      beyond: cureWaitOverHistoryLeavesTestedSpan,
    },
    {
      sort: 'note',
      text: 'Part of the history is below the minimum cure temperature and counts nothing.',
      beyond: cureWaitOverHistoryHasUncreditedTime,
    },
    {
      sort: 'note',
      text: "The maker's activation energy is missing: the longest wait of 40, 50 and 60 kJ/mol is taken.",
      beyond: activationEnergyMissing,
    },
  ],
});
