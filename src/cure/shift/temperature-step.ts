import { listOfRows, nonNegative, positive, refuse } from '../../formula/index.js';
import type { Temperature, Time } from '../../quantity/index.js';

/** A stretch of a temperature history: how long, and the mean temperature of the resin over it. */
export interface TemperatureStep {
  readonly duration: Time;
  readonly temperature: Temperature;
}

/** Refuses an empty history and steps that cannot be. */
export function checkSteps(steps: readonly TemperatureStep[]): void {
  listOfRows(steps, 'steps');
  if (steps.length === 0) {
    refuse({
      code: 'invalid-input',
      parameter: 'steps',
      value: 'empty',
      unit: '',
      constraint: 'must hold at least one step of { duration, temperature }',
    });
  }
  steps.forEach(({ duration, temperature }, index) => {
    nonNegative(duration, `steps[${index}].duration`, 's');
    positive(temperature, `steps[${index}].temperature`, 'K');
  });
}

/** The lowest and the highest temperature of a history. */
export function spanOf(steps: readonly TemperatureStep[]): readonly [lowest: number, highest: number] {
  let [lowest, highest] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const { temperature } of steps) {
    lowest = Math.min(lowest, temperature);
    highest = Math.max(highest, temperature);
  }
  return [lowest, highest];
}
