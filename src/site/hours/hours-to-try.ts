import { refuse } from '../../formula/index.js';
import { countUp } from '../../numeric/index.js';
import type { Time } from '../../quantity/index.js';

/** A leap year: no forecast of hours reaches so far, and each hour is a design of its own. */
const MOST_HOURS = 8784;

/**
 * The hours of a forecast at which a job may be tried to start, one at least.
 *
 * @internal
 * @param length of the forecast [s]
 * @throws CalculationError `invalid-input` for a forecast of more than a year
 */
export function hoursToTry(length: Time): number {
  const hours = Math.max(1, countUp(length / 3600));
  if (hours <= MOST_HOURS) return hours;
  const constraint = 'must be at most {limit}, a year: each hour of it is designed anew';
  return refuse({
    code: 'invalid-input',
    parameter: 'site.forecast',
    value: hours,
    unit: 'h',
    constraint,
    limit: MOST_HOURS,
  });
}
