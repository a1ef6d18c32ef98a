import { atLeast, formula, positive, refuse } from '../../formula/index.js';
import type { Stress, Temperature } from '../../quantity/index.js';

export interface LongTermStrengthAtInput {
  readonly coolStrength: Stress;
  readonly coolTemperature: Temperature;
  readonly warmStrength: Stress;
  readonly warmTemperature: Temperature;
  readonly designTemperature: Temperature;
}

/**
 * Long-term strength of a laminate at the design temperature, from tests at one temperature or at two.
 *
 * $$s_{lt} = s_1\quad(T \le T_1),\qquad s_{lt} = s_1 + (s_2 - s_1)\,\frac{T - T_1}{T_2 - T_1}\quad(T_1 < T \le T_2)$$
 *
 * @param input.coolStrength       s_1, at the cooler test [Pa], > 0
 * @param input.coolTemperature    T_1 [K], > 0
 * @param input.warmStrength       s_2, at the warmer test [Pa], > 0; that of the one test where there is one
 * @param input.warmTemperature    T_2 [K], >= T_1; that of the one test where there is one
 * @param input.designTemperature  T, hottest steel [K], > 0 and at most T_2
 * @returns long-term strength [Pa]
 * @throws CalculationError `invalid-input`; `outside-validity` above the warmer test
 * @remarks A polymer creeps faster when warm, so a test says nothing of a warmer pipe; a cooler one earns no credit.
 */
export function longTermStrengthAt(input: LongTermStrengthAtInput): Stress {
  const { coolStrength: s1, coolTemperature: T1, warmStrength: s2, warmTemperature: T2, designTemperature: T } = input;
  positive(s1, 'coolStrength', 'Pa');
  positive(T1, 'coolTemperature', 'K');
  positive(s2, 'warmStrength', 'Pa');
  positive(T2, 'warmTemperature', 'K');
  atLeast(T2, T1, 'the temperature of the cooler test', 'warmTemperature', 'K');
  positive(T, 'designTemperature', 'K');
  if (T > T2) {
    refuse({
      code: 'outside-validity',
      parameter: 'designTemperature',
      value: T,
      unit: 'K',
      constraint: 'must be at most the temperature of the long-term tests, {limit}: above it they say nothing',
      limit: T2,
    });
  }
  if (T <= T1) return s1;
  const share = (T - T1) / (T2 - T1);
  return (s1 * (1 - share) + s2 * share) as Stress;
}

export const longTermStrengthAtFormula = /* @__PURE__ */ formula<LongTermStrengthAtInput, Stress>({
  id: 'laminate/long-term-strength-at',
  title: 'Long-term strength at the design temperature',
  search: ['creep', 'stress rupture'],
  compute: longTermStrengthAt,
  equation: {
    branches: [
      { when: 'T <= T_1', expression: 's_1' },
      {
        where: [{ symbol: 'x', kind: 'number', expression: '(T - T_1) / (T_2 - T_1)' }],
        expression: 's_1 * (1 - x) + s_2 * x',
      },
    ],
  },
  inputs: {
    coolStrength: { symbol: 's_1', kind: 'stress', name: 'strength at the cooler test', sample: [6e7, 4e8] },
    coolTemperature: { symbol: 'T_1', kind: 'temperature', name: 'temperature of the cooler test', sample: [285, 320] },
    warmStrength: { symbol: 's_2', kind: 'stress', name: 'strength at the warmer test', sample: [3e7, 2e8] },
    warmTemperature: { symbol: 'T_2', kind: 'temperature', name: 'temperature of the warmer test', sample: [320, 370] },
    designTemperature: { symbol: 'T', kind: 'temperature', name: 'hottest steel', sample: [270, 360] },
  },
  output: { symbol: 's_lt', kind: 'stress', name: 'long-term strength' },
  sources: [],
  evidence: { form: { tag: 'chosen', note: 'A straight line between two tests, and never beyond them.' } },
  limits: [{ sort: 'stop', text: 'Above the temperature of the tests.' }],
});
