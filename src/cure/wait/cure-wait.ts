import { finite, formula, positive } from '../../formula/index.js';
import { arrheniusShift } from '../../mechanics/index.js';
import type { ActivationEnergy, MolarHeatCapacity, Temperature, Time } from '../../quantity/index.js';
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
  return leavesTestedSpan(input, input.temperature, input.temperature);
}

export const cureWaitFormula = /* @__PURE__ */ formula<CureWaitInput, CureWait>({
  id: 'cure/cure-wait',
  title: 'Wait for a stage of cure at constant temperature',
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
    referenceTemperature: {
      symbol: 'T_ref',
      kind: 'temperature',
      name: 'reference temperature',
      sample: [288.15, 308.15],
    },
    temperature: { symbol: 'T', kind: 'temperature', name: 'temperature', sample: [278.15, 333.15] },
    minimumTemperature: {
      symbol: 'T_min',
      kind: 'temperature',
      name: 'minimum cure temperature',
      sample: [273.15, 288.15],
    },
    activationEnergy: {
      symbol: 'E',
      kind: 'activation energy',
      name: "maker's activation energy",
      sample: [40e3, 80e3],
    },
    lowEnergy: {
      symbol: 'E_low',
      kind: 'activation energy',
      name: 'low bound without it',
      sample: [35e3, 45e3],
      default: 40000,
    },
    typicalEnergy: {
      symbol: 'E_typ',
      kind: 'activation energy',
      name: 'typical value without it',
      sample: [45e3, 55e3],
      default: 50000,
    },
    highEnergy: {
      symbol: 'E_high',
      kind: 'activation energy',
      name: 'high bound without it',
      sample: [55e3, 70e3],
      default: 60000,
    },
    mechanism: {
      symbol: 'mechanism',
      kind: 'choice',
      name: 'cure mechanism',
      choices: ['two-part reaction', 'moisture'],
    },
    testedFrom: { symbol: 'T_low', kind: 'temperature', name: 'lowest tested temperature', sample: [273.15, 288.15] },
    testedTo: { symbol: 'T_high', kind: 'temperature', name: 'highest tested temperature', sample: [308.15, 333.15] },
    gasConstant: {
      symbol: 'R',
      kind: 'molar heat capacity',
      name: 'molar gas constant',
      sample: [8.314, 8.3145],
      default: 8.31446261815324,
    },
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
