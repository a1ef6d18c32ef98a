import { nonNegative, positive, refuse } from '../../formula/index.js';
import type { Time } from '../../quantity/index.js';

/**
 * What mixing and soaking leave of the working time.
 *
 * @throws CalculationError `invalid-input`; `no-solution` when they leave nothing
 * @internal
 */
export function timeLeftToLay(input: {
  readonly workingTime: Time;
  readonly mixingTime: Time;
  readonly soakTime: Time;
}): number {
  const { workingTime: tw, mixingTime: tm, soakTime: ts } = input;
  positive(tw, 'workingTime', 's');
  nonNegative(tm, 'mixingTime', 's');
  nonNegative(ts, 'soakTime', 's');
  const overhead = tm + ts;
  if (tw > overhead) return tw - overhead;
  refuse({
    code: 'no-solution',
    parameter: 'workingTime',
    value: tw,
    unit: 's',
    constraint: 'must be longer than mixing and soaking, {limit}: no length is short enough',
    limit: overhead,
  });
}
