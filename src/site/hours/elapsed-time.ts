import { atLeast, finite, formula } from '../../formula/index.js';
import type { Time } from '../../quantity/index.js';

export interface ElapsedTimeInput {
  readonly from: Time;
  readonly to: Time;
}

/**
 * Time from one hour of the job to a later one: how long the climate has to hold, how long steel stands bare.
 *
 * $$\Delta t = t_2 - t_1$$
 *
 * @param input.from t_1, from the start of the job, below 0 before it [s]
 * @param input.to   t_2, from the start of the job [s], >= t_1
 * @returns time between them [s]
 * @throws CalculationError `invalid-input`
 */
export function elapsedTime(input: ElapsedTimeInput): Time {
  const { from, to } = input;
  finite(from, 'from', 's');
  atLeast(to, from, 'the earlier hour', 'to', 's');
  const elapsed = to - from;
  finite(elapsed, 'elapsedTime', 's');
  return elapsed as Time;
}

export const elapsedTimeFormula = /* @__PURE__ */ formula<ElapsedTimeInput, Time>({
  id: 'site/elapsed-time',
  title: 'Time between two hours of the job',
  compute: elapsedTime,
  equation: { expression: 't_2 - t_1' },
  inputs: {
    from: { symbol: 't_1', kind: 'time', name: 'earlier hour', sample: [0, 86400] },
    to: { symbol: 't_2', kind: 'time', name: 'later hour', sample: [86400, 604800] },
  },
  output: { symbol: 'dt', kind: 'time', name: 'time between them' },
  sources: [],
  evidence: { form: { tag: 'chosen' } },
  limits: [],
});
