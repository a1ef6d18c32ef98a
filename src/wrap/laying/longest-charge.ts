import { finite, formula, positive, wholeNumber } from '../../formula/index.js';
import type { Length, Speed, Time } from '../../quantity/index.js';
import { timeLeftToLay } from './time-left-to-lay.js';

export interface LongestChargeInput {
  readonly workingTime: Time;
  readonly mixingTime: Time;
  readonly soakTime: Time;
  readonly layingSpeed: Speed;
  readonly crews: number;
}

/**
 * Longest tape or sheet of one charge that lies before it gels.
 *
 * $$l = \left(t_w - (t_m + t_s)\right) n v$$
 *
 * @param input.workingTime t_w, working time of the resin at the site's temperature [s], > 0
 * @param input.mixingTime t_m, mixing of the batch [s], >= 0; 0 for tape that brings its own resin
 * @param input.soakTime t_s, soaking of the roll [s], >= 0
 * @param input.layingSpeed v, tape or sheet that one crew lays in a time [m/s], > 0
 * @param input.crews n, crews that work side by side, whole, 1 or above
 * @returns length that takes the whole working time [m]
 * @throws CalculationError `invalid-input`; `no-solution` when mixing and soaking take the whole working time
 */
export function longestCharge(input: LongestChargeInput): Length {
  const { layingSpeed: v, crews: n } = input;
  const left = timeLeftToLay(input);
  positive(v, 'layingSpeed', 'm/s');
  wholeNumber(n, 1, 'crews');
  const l = left * v * n;
  finite(l, 'longest charge', 'm');
  return l as Length;
}

export const longestChargeFormula = /* @__PURE__ */ formula<LongestChargeInput, Length>({
  id: 'wrap/longest-charge',
  title: 'Longest charge that lies before it gels',
  search: ['pot life', 'wet out'],
  compute: longestCharge,
  equation: { expression: '(t_w - (t_m + t_s)) * v * n' },
  inputs: {
    workingTime: { symbol: 't_w', kind: 'time', name: 'working time', sample: [600, 7200] },
    mixingTime: { symbol: 't_m', kind: 'time', name: 'mixing of the batch', sample: [0, 400] },
    soakTime: { symbol: 't_s', kind: 'time', name: 'soaking of the roll', sample: [0, 60] },
    layingSpeed: {
      symbol: 'v',
      kind: 'speed',
      name: 'tape or sheet that one crew lays in a time',
      sample: [0.002, 0.2],
    },
    crews: { symbol: 'n', kind: 'count', name: 'crews that work side by side', sample: [1, 4] },
  },
  output: { symbol: 'l', kind: 'length', name: 'longest tape or sheet of one charge' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'inverse of the time to lay it' } },
  limits: [{ sort: 'stop', text: 'mixing and soaking leave some of the working time' }],
});
