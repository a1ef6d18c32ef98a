import { formula, positive, refuse } from '../../formula/index.js';
import type { MolarHeatCapacity, Temperature, Time } from '../../quantity/index.js';
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
import { checkTestedSpan, type TestedSpan } from '../shift/tested-span.js';
import { type CureMechanism, onlyTwoPart } from './cure-mechanism.js';
import { activationEnergyMissing, type EnergyChoice, energiesOf } from './energy-bounds.js';
import { workingTime } from './working-time.js';

export interface WarmestForWorkingTimeInput extends TestedSpan, EnergyChoice {
  readonly time: Time;
  readonly neededTime: Time;
  readonly minimumTemperature: Temperature;
  readonly mechanism: CureMechanism;
  readonly gasConstant?: MolarHeatCapacity | undefined;
}

export interface WarmestForWorkingTime {
  readonly temperature: Temperature;
  readonly limitedBy: 'working time' | 'tested span';
}

/**
 * The warmest at which a mixed resin can still be worked for a wanted time, from the coldest that cures to the hottest that
 * was tested.
 *
 * $$T = \min_E \left(\frac{1}{T_{ref}} - \frac{R}{E} \ln\frac{t_{ref}}{t}\right)^{-1}$$
 *
 * @param input.time                 t_ref, the maker's working time at the reference temperature [s], > 0
 * @param input.neededTime           t, time that the resin must stay workable [s], > 0
 * @param input.referenceTemperature T_ref [K], > 0
 * @param input.activationEnergy     E from the maker; else the coolest of the three bounds is taken [J/mol]
 * @param input.testedTo             T_high, the answer is never above it [K]; the reference temperature when not given
 * @param input.minimumTemperature   T_min, the coldest that cures [K], > 0
 * @param input.mechanism            only a two-part reaction is shifted
 * @returns the warmest temperature, and what sets it [K]
 * @throws CalculationError `invalid-input`; `outside-validity` for a moisture-cured system; `no-solution` when the resin is
 *   too fast even at the minimum temperature
 * @remarks Where the minimum temperature lies above the tested span, it alone is left.
 * @see ASTM C1074 (equivalent age)
 */
export function warmestForWorkingTime(input: WarmestForWorkingTimeInput): WarmestForWorkingTime {
  const { time, neededTime, minimumTemperature, mechanism, referenceTemperature } = input;
  const { testedTo = referenceTemperature, gasConstant = 8.31446261815324 as MolarHeatCapacity } = input;
  onlyTwoPart(mechanism);
  positive(time, 'time', 's');
  positive(neededTime, 'neededTime', 's');
  positive(minimumTemperature, 'minimumTemperature', 'K');
  positive(gasConstant, 'gasConstant', 'J/(mol K)');
  checkTestedSpan(input);
  const hottest = Math.max(testedTo, minimumTemperature);
  const logarithm = Math.log(time / neededTime);
  let warmest = hottest as number;
  for (const energy of energiesOf(input)) {
    const reciprocal = 1 / referenceTemperature - (gasConstant / energy) * logarithm;
    // At or below zero no temperature is too warm for this energy.
    if (reciprocal > 0) warmest = Math.min(warmest, 1 / reciprocal);
  }
  if (!(warmest >= minimumTemperature)) {
    const coldest = { ...input, temperature: minimumTemperature };
    tooFast(neededTime, workingTime(coldest).workingTime);
  }
  return {
    temperature: warmest as Temperature,
    limitedBy: warmest < hottest ? 'working time' : 'tested span',
  };
}

function tooFast(neededTime: number, atMinimum: number): never {
  refuse({
    code: 'no-solution',
    parameter: 'neededTime',
    value: neededTime,
    unit: 's',
    constraint: 'must be at most {limit}, the working time at the minimum cure temperature',
    limit: atMinimum,
  });
}

export const warmestForWorkingTimeFormula = /* @__PURE__ */ formula<WarmestForWorkingTimeInput, WarmestForWorkingTime>({
  id: 'cure/warmest-for-working-time',
  title: 'Warmest that leaves the working time',
  search: ['hot weather', 'pot life'],
  compute: warmestForWorkingTime,
  equation: {
    algorithm:
      "With the maker's activation energy that one temperature; without it those of the low, the typical and the high energy. Each is 1 / (1/T_ref - R/E ln(t_ref/t)); the coolest of them and of the hottest tested temperature governs.",
  },
  inputs: {
    time: { symbol: 't_ref', kind: 'time', name: 'working time at the reference temperature', sample: [20, 7200] },
    neededTime: { symbol: 't', kind: 'time', name: 'time that the resin must stay workable', sample: [20, 7200] },
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
    temperature: { symbol: 'T', kind: 'temperature', name: 'warmest that leaves the time' },
    limitedBy: { symbol: 'limit', kind: 'choice', name: 'what sets it' },
  },
  sources: [{ key: 'astm-c1074', locator: 'equivalent age' }],
  evidence: {
    form: { tag: 'secondary', derived: 'bisection on the working time' },
    E_low: { tag: 'chosen' },
    E_typ: { tag: 'chosen' },
    E_high: { tag: 'chosen' },
  },
  limits: [
    { sort: 'stop', text: 'A moisture-cured system is never shifted by temperature.' },
    {
      sort: 'note',
      text: "The maker's activation energy is missing: the coolest of 40, 50 and 60 kJ/mol is taken.",
      beyond: activationEnergyMissing,
    },
  ],
});
