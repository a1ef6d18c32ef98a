import { formula, nonNegative, positive, wholeNumber } from '../../formula/index.js';
import type { Mass, MassFlow, Time } from '../../quantity/index.js';

export interface PlacingTimeInput {
  readonly batches: number;
  readonly mass: Mass;
  readonly placingRate: MassFlow;
  readonly mixingTime: Time;
}

/**
 * Time to mix and place all batches, one after the other by the same hands.
 *
 * $$t = N t_m + \frac{m}{\dot m}$$
 *
 * @param input.batches     N, batches, >= 1
 * @param input.mass        m, mass of all of them [kg], > 0
 * @param input.placingRate q, mass placed per time [kg/s], > 0
 * @param input.mixingTime  t_m, mixing of one batch [s], >= 0
 * @returns time from the start of mixing to the last of it in place [s]
 * @throws CalculationError `invalid-input`
 */
export function placingTime(input: PlacingTimeInput): Time {
  const { batches: N, mass: m, placingRate: q, mixingTime: tM } = input;
  wholeNumber(N, 1, 'batches');
  positive(m, 'mass', 'kg');
  positive(q, 'placingRate', 'kg/s');
  nonNegative(tM, 'mixingTime', 's');
  const t = N * tM + m / q;
  positive(t, 'placingTime', 's');
  return t as Time;
}

export const placingTimeFormula = /* @__PURE__ */ formula<PlacingTimeInput, Time>({
  id: 'resin/placing-time',
  title: 'Time to mix and place',
  search: ['mixing time', 'how long to place'],
  compute: placingTime,
  equation: { expression: 'N * t_m + m / q' },
  inputs: {
    batches: { symbol: 'N', kind: 'count', name: 'batches', sample: [1, 12] },
    mass: { symbol: 'm', kind: 'mass', name: 'mass of all batches', sample: [0.1, 30] },
    placingRate: { symbol: 'q', kind: 'mass flow', name: 'mass placed per time', sample: [0.0001, 0.02] },
    mixingTime: { symbol: 't_m', kind: 'time', name: 'time to mix one batch', sample: [60, 600] },
  },
  output: { symbol: 't', kind: 'time', name: 'time to mix and place' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'stock placed second by second' } },
  limits: [],
});
