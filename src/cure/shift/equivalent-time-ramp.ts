import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import { arrheniusShift } from '../../mechanics/index.js';
import { integrate } from '../../numeric/index.js';
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
import type { EquivalentTime } from './equivalent-time.js';
import { checkTestedSpan, leavesTestedSpan, type TestedSpan } from './tested-span.js';

export interface EquivalentTimeRampInput extends TestedSpan {
  readonly startTemperature: Temperature;
  readonly endTemperature: Temperature;
  readonly duration: Time;
  readonly activationEnergy: ActivationEnergy;
  readonly minimumTemperature: Temperature;
  readonly mechanism: CureMechanism;
  readonly gasConstant?: MolarHeatCapacity | undefined;
}

/**
 * Equivalent time of a linear rise or fall of temperature.
 *
 * $$t_e = \int_0^{d} \exp\!\left[\frac{E}{R}\left(\frac{1}{T_{ref}} - \frac{1}{T(t)}\right)\right] dt,
 *   \qquad T(t) = T_1 + (T_2 - T_1)\,t/d$$
 *
 * @param input.startTemperature     T_1 [K], > 0
 * @param input.endTemperature       T_2 [K], > 0
 * @param input.duration             d [s], >= 0
 * @param input.referenceTemperature T_ref [K], > 0
 * @param input.activationEnergy     E [J/mol], > 0
 * @param input.minimumTemperature   T_min [K]: the part of the ramp below it counts nothing
 * @param input.mechanism            only a two-part reaction is shifted
 * @returns equivalent time, clock time that was credited, clock time below T_min that was not [s]
 * @throws CalculationError `invalid-input`; `outside-validity` for a moisture-cured system
 * @remarks By adaptive quadrature; the closed form by the exponential integral E1 stands in verification/ as the check.
 * @see ASTM C1074 (equivalent age)
 */
export function equivalentTimeRamp(input: EquivalentTimeRampInput): EquivalentTime {
  const { startTemperature: T1, endTemperature: T2, duration, minimumTemperature, mechanism } = input;
  const { referenceTemperature, activationEnergy, gasConstant } = input;
  onlyTwoPart(mechanism);
  positive(T1, 'startTemperature', 'K');
  positive(T2, 'endTemperature', 'K');
  nonNegative(duration, 'duration', 's');
  positive(minimumTemperature, 'minimumTemperature', 'K');
  checkTestedSpan(input);
  const factor = (temperature: number): number =>
    arrheniusShift({
      activationEnergy,
      referenceTemperature,
      temperature: temperature as Temperature,
      gasConstant,
    });
  const [cold, hot] = [Math.min(T1, T2), Math.max(T1, T2)];
  const tolerance = 1e-13 * factor(hot);
  // By symmetry in time a fall counts as the rise from its end. x runs over the ramp from its cold end.
  const from = coldShare(cold, hot, minimumTemperature);
  const whole = integrate((x) => factor(cold + x * (hot - cold)), from, 1, tolerance);
  finite(duration * whole, 'duration', 's');
  return {
    equivalentTime: (duration * whole) as Time,
    creditedTime: (duration * (1 - from)) as Time,
    uncreditedTime: (duration * from) as Time,
  };
}

/** The share of a ramp between two temperatures that lies below a third. */
function coldShare(cold: number, hot: number, minimum: number): number {
  if (minimum <= cold) return 0;
  return minimum > hot ? 1 : (minimum - cold) / (hot - cold);
}

/** Whether a credited part of the ramp leaves the span in which the maker's times were measured. */
export function equivalentTimeRampLeavesTestedSpan(input: EquivalentTimeRampInput): boolean {
  const { startTemperature: T1, endTemperature: T2, minimumTemperature } = input;
  const [cold, hot] = [Math.max(minimumTemperature, Math.min(T1, T2)), Math.max(T1, T2)];
  return hot >= cold && leavesTestedSpan(input, cold, hot);
}

/** Whether part of the ramp is too cold to count. */
export function equivalentTimeRampHasUncreditedTime(input: EquivalentTimeRampInput): boolean {
  return Math.min(input.startTemperature, input.endTemperature) < input.minimumTemperature;
}

export const equivalentTimeRampFormula = /* @__PURE__ */ formula<EquivalentTimeRampInput, EquivalentTime>({
  id: 'cure/equivalent-time-ramp',
  title: 'Equivalent cure time over a linear ramp',
  search: ['maturity', 'heating up'],
  compute: equivalentTimeRamp,
  equation: {
    algorithm:
      'Integral over the ramp of exp(E/R (1/T_ref - 1/T)) by adaptive Simpson; the part below the minimum cure temperature counts nothing.',
  },
  inputs: {
    startTemperature: {
      symbol: 'T_1',
      kind: 'temperature',
      name: 'temperature at the start',
      sample: [273.15, 333.15],
    },
    endTemperature: { symbol: 'T_2', kind: 'temperature', name: 'temperature at the end', sample: [273.15, 353.15] },
    duration: { symbol: 'd', kind: 'time', name: 'duration', sample: [600, 172800] },
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
  evidence: { form: { tag: 'secondary', derived: 'closed form by the exponential integral' } },
  limits: [
    { sort: 'stop', text: 'A moisture-cured system is never shifted by temperature.' },
    {
      sort: 'note',
      text: 'The ramp leaves the span in which the times were measured: the activation energy is extrapolated.',
      beyond: equivalentTimeRampLeavesTestedSpan,
    },
    {
      sort: 'note',
      text: 'Part of the ramp is below the minimum cure temperature and counts nothing.',
      beyond: equivalentTimeRampHasUncreditedTime,
    },
  ],
});
