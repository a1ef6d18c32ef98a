import { finite, formula, nonNegative, positive } from '../../formula/index.js';
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
import { checkSwing, type DailySwing, spanOfSwing, swingCredit } from './daily-swing.js';
import type { EquivalentTime } from './equivalent-time.js';
import { checkTestedSpan, leavesTestedSpan, type TestedSpan } from './tested-span.js';

export interface EquivalentTimeSwingInput extends TestedSpan, DailySwing {
  readonly duration: Time;
  readonly activationEnergy: ActivationEnergy;
  readonly minimumTemperature: Temperature;
  readonly mechanism: CureMechanism;
  readonly gasConstant?: MolarHeatCapacity | undefined;
}

/**
 * Equivalent time of a daily swing of temperature.
 *
 * $$t_e = \int_0^{d} \exp\!\left[\frac{E}{R}\left(\frac{1}{T_{ref}} - \frac{1}{T(t)}\right)\right] dt,
 *   \qquad T(t) = T_m - \frac{\Delta T}{2}\cos\frac{2\pi (t + t_0)}{p}$$
 *
 * @param input.meanTemperature      T_m [K], > 0
 * @param input.swing                dT, highest minus lowest [K], >= 0
 * @param input.sinceColdest         t_0, from the coldest hour to the start [s], >= 0
 * @param input.period               p, one day when absent [s], > 0
 * @param input.duration             d [s], >= 0
 * @param input.referenceTemperature T_ref [K], > 0
 * @param input.activationEnergy     E [J/mol], > 0
 * @param input.minimumTemperature   T_min [K]: hours below it count nothing
 * @param input.mechanism            only a two-part reaction is shifted
 * @returns equivalent time, clock time that was credited, clock time below T_min that was not [s]
 * @throws CalculationError `invalid-input`; `outside-validity` for a moisture-cured system
 * @remarks Never below the equivalent time of the mean temperature while no hour is below T_min.
 * @see ASTM C1074 (equivalent age)
 */
export function equivalentTimeSwing(input: EquivalentTimeSwingInput): EquivalentTime {
  const { duration, minimumTemperature, mechanism, referenceTemperature, activationEnergy, gasConstant } = input;
  onlyTwoPart(mechanism);
  checkSwing(input);
  nonNegative(duration, 'duration', 's');
  positive(minimumTemperature, 'minimumTemperature', 'K');
  checkTestedSpan(input);
  const credit = swingCredit(input, minimumTemperature, (temperature) =>
    arrheniusShift({ activationEnergy, referenceTemperature, temperature: temperature as Temperature, gasConstant }),
  )(duration);
  finite(credit.equivalent, 'duration', 's');
  return {
    equivalentTime: credit.equivalent as Time,
    creditedTime: credit.credited as Time,
    uncreditedTime: (duration - credit.credited) as Time,
  };
}

/** Whether a credited hour of the swing leaves the span in which the maker's times were measured. */
export function equivalentTimeSwingLeavesTestedSpan(input: EquivalentTimeSwingInput): boolean {
  const [lowest, highest] = spanOfSwing(input);
  const { minimumTemperature } = input;
  return highest >= minimumTemperature && leavesTestedSpan(input, Math.max(lowest, minimumTemperature), highest);
}

/** Whether some hours are too cold to count. */
export function equivalentTimeSwingHasUncreditedTime(input: EquivalentTimeSwingInput): boolean {
  return spanOfSwing(input)[0] < input.minimumTemperature;
}

export const equivalentTimeSwingFormula = /* @__PURE__ */ formula<EquivalentTimeSwingInput, EquivalentTime>({
  id: 'cure/equivalent-time-swing',
  title: 'Equivalent cure time over a daily swing',
  search: ['maturity', 'day and night'],
  compute: equivalentTimeSwing,
  equation: {
    algorithm:
      'Integral over the swing of exp(E/R (1/T_ref - 1/T)) by adaptive Simpson on eighths of a day; hours below the minimum cure temperature count nothing.',
  },
  inputs: {
    meanTemperature: { symbol: 'T_m', kind: 'temperature', name: 'mean temperature', sample: [283.15, 308.15] },
    swing: { symbol: 'dT', kind: 'temperature difference', name: 'highest minus lowest', sample: [0, 25] },
    sinceColdest: { symbol: 't_0', kind: 'time', name: 'from the coldest hour to the start', sample: [0, 86400] },
    period: { symbol: 'p', kind: 'time', name: 'period', sample: [43200, 86400], default: 86400 },
    duration: { symbol: 'd', kind: 'time', name: 'duration', sample: [3600, 604800] },
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
  evidence: { form: { tag: 'secondary' }, p: { tag: 'chosen', note: 'a sine is our form of a day without a log' } },
  limits: [
    { sort: 'stop', text: 'A moisture-cured system is never shifted by temperature.' },
    {
      sort: 'note',
      text: 'The swing leaves the span in which the times were measured: the activation energy is extrapolated.',
      beyond: equivalentTimeSwingLeavesTestedSpan,
    },
    {
      sort: 'note',
      text: 'Some hours are below the minimum cure temperature and count nothing.',
      beyond: equivalentTimeSwingHasUncreditedTime,
    },
  ],
});
