import { finite, formula, positive, refuse } from '../../formula/index.js';
import { arrheniusShift } from '../../mechanics/index.js';
import { bisect } from '../../numeric/index.js';
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
import { checkSwing, type DailySwing, spanOfSwing, swingCredit } from '../shift/daily-swing.js';
import { checkTestedSpan, leavesTestedSpan, type TestedSpan } from '../shift/tested-span.js';
import { type CureMechanism, onlyTwoPart } from './cure-mechanism.js';
import { activationEnergyMissing, type EnergyChoice, energiesOf, extremes } from './energy-bounds.js';

export interface CureWaitOverSwingInput extends TestedSpan, EnergyChoice, DailySwing {
  readonly requiredTime: Time;
  readonly minimumTemperature: Temperature;
  readonly mechanism: CureMechanism;
  readonly gasConstant?: MolarHeatCapacity | undefined;
}

export interface CureWaitOverSwing {
  readonly wait: Time;
  readonly governingEnergy: ActivationEnergy;
  readonly shortest: Time;
}

/**
 * When a daily swing of temperature reaches the cure that a stated time gives at its reference temperature.
 *
 * $$\int_0^{t} a_T(T(\tau))\,[T(\tau) \ge T_{min}]\, d\tau = t_{req}$$
 *
 * @param input.meanTemperature      T_m [K], > 0
 * @param input.swing                dT, highest minus lowest [K], >= 0
 * @param input.sinceColdest         t_0, from the coldest hour to the start [s], >= 0
 * @param input.period               p, one day when absent [s], > 0
 * @param input.requiredTime         t_req, the maker's time to this stage at the reference temperature [s], > 0
 * @param input.referenceTemperature T_ref [K], > 0
 * @param input.minimumTemperature   T_min [K]: hours below it count nothing
 * @param input.activationEnergy     E from the maker; else the latest of the three bounds is taken [J/mol]
 * @param input.mechanism            only a two-part reaction is shifted
 * @returns clock time from the start, the energy that it goes by, and the earliest that the bounds allow
 * @throws CalculationError `invalid-input`; `outside-validity` for a moisture-cured system; `no-solution` when every
 *   hour is below T_min
 * @see ASTM C1074 (equivalent age)
 */
export function cureWaitOverSwing(input: CureWaitOverSwingInput): CureWaitOverSwing {
  const { requiredTime, minimumTemperature, mechanism, referenceTemperature, gasConstant } = input;
  const { period = 86400 as Time } = input;
  onlyTwoPart(mechanism);
  checkSwing(input);
  positive(requiredTime, 'requiredTime', 's');
  positive(minimumTemperature, 'minimumTemperature', 'K');
  checkTestedSpan(input);
  const { longest, longestBy, shortest } = extremes(energiesOf(input), (energy) => {
    const activationEnergy = energy as ActivationEnergy;
    const credit = swingCredit(input, minimumTemperature, (temperature) =>
      arrheniusShift({ activationEnergy, referenceTemperature, temperature: temperature as Temperature, gasConstant }),
    );
    const aDay = credit(period).equivalent;
    if (!(aDay > 0)) tooCold(spanOfSwing(input)[1], minimumTemperature);
    const days = Math.floor(requiredTime / aDay);
    const missing = (clock: number): number => credit(clock).equivalent - requiredTime;
    // One period more on either side: the quotient may be rounded across a whole number.
    const wait = bisect(missing, Math.max(0, days - 1) * period, (days + 2) * period)?.root ?? Number.POSITIVE_INFINITY;
    finite(wait, 'requiredTime', 's');
    return wait;
  });
  return { wait: longest as Time, governingEnergy: longestBy as ActivationEnergy, shortest: shortest as Time };
}

function tooCold(highest: number, minimumTemperature: number): never {
  refuse({
    code: 'no-solution',
    parameter: 'meanTemperature',
    value: highest,
    unit: 'K at its highest',
    constraint: `some hour must be above the minimum cure temperature, ${minimumTemperature} K; heat the pipe`,
  });
}

/** Whether a credited hour of the swing leaves the span in which the maker's times were measured. */
export function cureWaitOverSwingLeavesTestedSpan(input: CureWaitOverSwingInput): boolean {
  const [lowest, highest] = spanOfSwing(input);
  const { minimumTemperature } = input;
  return highest >= minimumTemperature && leavesTestedSpan(input, Math.max(lowest, minimumTemperature), highest);
}

/** Whether some hours are too cold to count. */
export function cureWaitOverSwingHasUncreditedTime(input: CureWaitOverSwingInput): boolean {
  return spanOfSwing(input)[0] < input.minimumTemperature;
}

export const cureWaitOverSwingFormula = /* @__PURE__ */ formula<CureWaitOverSwingInput, CureWaitOverSwing>({
  id: 'cure/cure-wait-over-swing',
  title: 'Wait for a stage of cure over a daily swing',
  search: ['cure time', 'day and night', 'maturity'],
  compute: cureWaitOverSwing,
  equation: {
    algorithm:
      'The clock time at which the integral of exp(E/R (1/T_ref - 1/T)) over the swing equals the required time, by bisection; the latest of the activation energies governs.',
  },
  inputs: {
    meanTemperature: { symbol: 'T_m', kind: 'temperature', name: 'mean temperature', sample: [283.15, 308.15] },
    swing: { symbol: 'dT', kind: 'temperature difference', name: 'highest minus lowest', sample: [0, 25] },
    sinceColdest: { symbol: 't_0', kind: 'time', name: 'from the coldest hour to the start', sample: [0, 86400] },
    period: { symbol: 'p', kind: 'time', name: 'period', sample: [43200, 86400], default: 86400 },
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
      text: 'The swing leaves the span in which the times were measured: the activation energy is extrapolated.',
      beyond: cureWaitOverSwingLeavesTestedSpan,
    },
    {
      sort: 'note',
      text: 'Some hours are below the minimum cure temperature and count nothing.',
      beyond: cureWaitOverSwingHasUncreditedTime,
    },
    {
      sort: 'note',
      text: "The maker's activation energy is missing: the longest wait of 40, 50 and 60 kJ/mol is taken.",
      beyond: activationEnergyMissing,
    },
  ],
});
