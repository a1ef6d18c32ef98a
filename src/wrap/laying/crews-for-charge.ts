import { formula, positive, wholeNumber } from '../../formula/index.js';
import { countUp } from '../../numeric/index.js';
import type { Length, Speed, Time } from '../../quantity/index.js';
import { timeLeftToLay } from './time-left-to-lay.js';

export interface CrewsForChargeInput {
  readonly chargeLength: Length;
  readonly workingTime: Time;
  readonly mixingTime: Time;
  readonly soakTime: Time;
  readonly layingSpeed: Speed;
}

/**
 * Crews side by side that lay one charge before it gels.
 *
 * $$n = \left\lceil \frac{l}{\left(t_w - (t_m + t_s)\right) v} \right\rceil$$
 *
 * @param input.chargeLength l, tape or sheet of one charge [m], > 0
 * @param input.workingTime t_w, working time of the resin at the site's temperature [s], > 0
 * @param input.mixingTime t_m, mixing of the batch [s], >= 0; 0 for tape that brings its own resin
 * @param input.soakTime t_s, soaking of the roll [s], >= 0
 * @param input.layingSpeed v, tape or sheet that one crew lays in a time [m/s], > 0
 * @returns crews, whole, at least 1
 * @throws CalculationError `invalid-input`; `no-solution` when mixing and soaking take the whole working time
 * @remarks Each crew lays its own length of the roll.
 */
export function crewsForCharge(input: CrewsForChargeInput): number {
  const { chargeLength: l, layingSpeed: v } = input;
  const left = timeLeftToLay(input);
  positive(l, 'chargeLength', 'm');
  positive(v, 'layingSpeed', 'm/s');
  const n = Math.max(1, countUp(l / (left * v)));
  wholeNumber(n, 1, 'crews');
  return n;
}

export const crewsForChargeFormula = /* @__PURE__ */ formula<CrewsForChargeInput, number>({
  id: 'wrap/crews-for-charge',
  title: 'Crews that lay a charge before it gels',
  compute: crewsForCharge,
  equation: {
    expression: 'max(1, ceil(q - 1e-9 * max(1, q)))',
    where: [{ symbol: 'q', kind: 'number', expression: 'l / ((t_w - (t_m + t_s)) * v)' }],
  },
  inputs: {
    chargeLength: { symbol: 'l', kind: 'length', name: 'tape or sheet of one charge', sample: [1, 100] },
    workingTime: { symbol: 't_w', kind: 'time', name: 'working time', sample: [600, 7200] },
    mixingTime: { symbol: 't_m', kind: 'time', name: 'mixing of the batch', sample: [0, 400] },
    soakTime: { symbol: 't_s', kind: 'time', name: 'soaking of the roll', sample: [0, 60] },
    layingSpeed: {
      symbol: 'v',
      kind: 'speed',
      name: 'tape or sheet that one crew lays in a time',
      sample: [0.002, 0.2],
    },
  },
  output: { symbol: 'n', kind: 'count', name: 'crews side by side' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'crews added one by one until it fits' } },
  limits: [{ sort: 'stop', text: 'mixing and soaking leave some of the working time' }],
});
