import { finite, formula, nonNegative, positive, wholeNumber } from '../../formula/index.js';
import type { Length, Speed, Time } from '../../quantity/index.js';

export interface LayingTimeInput {
  readonly length: Length;
  readonly layingSpeed: Speed;
  readonly crews: number;
  readonly soakings: number;
  readonly soakTime: Time;
  readonly batches: number;
  readonly mixingTime: Time;
}

/**
 * How long a length of tape or sheet takes: soaking of rolls, mixing of batches, laying.
 *
 * $$t = n_s t_s + n_b t_m + \frac{L}{n v}$$
 *
 * @param input.length L, tape or sheet to lay [m], > 0
 * @param input.layingSpeed v, tape or sheet that one crew lays in a time [m/s], > 0
 * @param input.crews n, crews that work side by side, whole, 1 or above
 * @param input.soakings n_s, rolls that are soaked one after another, whole, 0 or above
 * @param input.soakTime t_s, soaking of one roll [s], >= 0
 * @param input.batches n_b, batches that are mixed one after another, whole, 0 or above
 * @param input.mixingTime t_m, mixing of one batch [s], >= 0
 * @returns time for all of it [s]
 * @throws CalculationError `invalid-input`
 * @remarks Crews that work side by side share a roll: it is cut to as many lengths. Nothing is counted for walking,
 *   waiting or a slip.
 */
export function layingTime(input: LayingTimeInput): Time {
  const { length: L, layingSpeed: v, crews: n, soakings: ns, soakTime: ts, batches: nb, mixingTime: tm } = input;
  positive(L, 'length', 'm');
  positive(v, 'layingSpeed', 'm/s');
  wholeNumber(n, 1, 'crews');
  wholeNumber(ns, 0, 'soakings');
  nonNegative(ts, 'soakTime', 's');
  wholeNumber(nb, 0, 'batches');
  nonNegative(tm, 'mixingTime', 's');
  const t = ns * ts + nb * tm + L / (n * v);
  finite(t, 'laying time', 's');
  return t as Time;
}

export const layingTimeFormula = /* @__PURE__ */ formula<LayingTimeInput, Time>({
  id: 'wrap/laying-time',
  title: 'Time to lay tape or sheet',
  search: ['wrapping speed', 'how long to wrap'],
  compute: layingTime,
  equation: { expression: 'n_s * t_s + n_b * t_m + L / (n * v)' },
  inputs: {
    length: { symbol: 'L', kind: 'length', name: 'tape or sheet to lay', sample: [1, 500] },
    layingSpeed: {
      symbol: 'v',
      kind: 'speed',
      name: 'tape or sheet that one crew lays in a time',
      sample: [0.002, 0.2],
    },
    crews: { symbol: 'n', kind: 'count', name: 'crews that work side by side', sample: [1, 4] },
    soakings: { symbol: 'n_s', kind: 'count', name: 'rolls that are soaked one after another', sample: [0, 20] },
    soakTime: { symbol: 't_s', kind: 'time', name: 'soaking of one roll', sample: [0, 60] },
    batches: { symbol: 'n_b', kind: 'count', name: 'batches that are mixed one after another', sample: [0, 20] },
    mixingTime: { symbol: 't_m', kind: 'time', name: 'mixing of one batch', sample: [0, 600] },
  },
  output: { symbol: 't', kind: 'time', name: 'time to lay it' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'roll after roll by the clock' } },
  limits: [],
});
