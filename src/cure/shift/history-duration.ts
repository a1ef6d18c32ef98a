import { finite, formula } from '../../formula/index.js';
import type { Time } from '../../quantity/index.js';
import { checkSteps, type TemperatureStep } from './temperature-step.js';

export interface HistoryDurationInput {
  readonly steps: readonly TemperatureStep[];
}

/**
 * How long a temperature history lasts.
 *
 * $$t = \sum_i \Delta t_i$$
 *
 * @param input.steps  stretches of constant temperature, in order
 * @returns time [s]
 * @throws CalculationError `invalid-input`
 */
export function historyDuration(input: HistoryDurationInput): Time {
  checkSteps(input.steps);
  let t = 0;
  for (const { duration } of input.steps) t += duration;
  finite(t, 'steps', 's');
  return t as Time;
}

export const historyDurationFormula = /* @__PURE__ */ formula<HistoryDurationInput, Time>({
  id: 'cure/history-duration',
  title: 'Length of a temperature history',
  compute: historyDuration,
  equation: { algorithm: 'Sum of the durations of the steps.' },
  inputs: {
    steps: {
      symbol: 'steps',
      kind: 'list',
      name: 'stretches of constant temperature',
      columns: { duration: 'time', temperature: 'temperature' },
    },
  },
  output: { symbol: 't', kind: 'time', name: 'length of the history' },
  sources: [],
  evidence: { form: { tag: 'practice' } },
  limits: [],
});
