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
  for (let i = 0; i < steps.length; i++) {
    const { duration, temperature } = steps[i] as TemperatureStep;
    // Names are made only for a step that is refused: this runs for every hour of a long history.
    if (!(Number.isFinite(duration) && duration >= 0)) nonNegative(duration, `steps[${i}].duration`, 's');
    if (!(Number.isFinite(temperature) && temperature > 0)) positive(temperature, `steps[${i}].temperature`, 'K');
  }
}
