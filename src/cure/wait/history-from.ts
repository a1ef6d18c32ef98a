import { formula, nonNegative } from '../../formula/index.js';
import { lengthOf, stretchesFrom } from '../../numeric/stretches.js';
import type { Time } from '../../quantity/index.js';
import { checkSteps, type TemperatureStep } from '../shift/temperature-step.js';

export interface HistoryFromInput {
  readonly steps: readonly TemperatureStep[];
  readonly start: Time;
}

export interface HistoryFrom {
  /** How much of the history is left; 0 where it ends before. */
  readonly left: Time;
  readonly steps: readonly TemperatureStep[];
}

/**
 * What is left of a temperature history for a resin that is laid at a later hour of it.
 *
 * $$T'(\tau) = T(t_0 + \tau)$$
 *
 * @param input.steps stretches of constant temperature in a row
 * @param input.start t_0, hour of the history at which the resin is laid [s], >= 0
 * @returns how much of the history is left, and its stretches from that hour on; none where the history ends before
 * @throws CalculationError `invalid-input`
 * @remarks Less than a billionth of a stretch counts as past: it is what rounding left of it.
 */
export function historyFrom(input: HistoryFromInput): HistoryFrom {
  const { steps: before, start } = input;
  checkSteps(before);
  nonNegative(start, 'start', 's');
  const steps = stretchesFrom(before, start);
  return { left: lengthOf(steps) as Time, steps };
}

export const historyFromFormula = /* @__PURE__ */ formula<HistoryFromInput, HistoryFrom>({
  id: 'cure/history-from',
  title: 'Temperature history from a later hour',
  compute: historyFrom,
  equation: {
    algorithm:
      'Stretch by stretch: those that end before t_0 are left out, the one that t_0 falls into keeps what is left of it, those after it stay as they are.',
  },
  inputs: {
    steps: {
      symbol: 'steps',
      kind: 'list',
      name: 'temperature history',
      columns: { duration: 'time', temperature: 'temperature' },
    },
    start: { symbol: 't_0', kind: 'time', name: 'hour at which the resin is laid', sample: [0, 259200] },
  },
  output: {
    left: { symbol: 't_left', kind: 'time', name: 'history left' },
    steps: {
      symbol: 'left',
      kind: 'list',
      name: 'history from that hour',
      columns: { duration: 'time', temperature: 'temperature' },
    },
  },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'history looked up second by second' } },
  limits: [],
});
