import { refuse } from '../../formula/index.js';
import { type ClockTime, readClock } from '../../quantity/clock.js';

/**
 * Reads `07:30`, or `2 07:30` on the second day.
 *
 * @throws CalculationError `invalid-input`
 */
export function readHour(text: string, parameter: string): ClockTime {
  const hour = readClock(text);
  if (hour !== undefined) return hour;
  refuse({
    code: 'invalid-input',
    parameter,
    value: text,
    unit: '',
    constraint: 'must be a clock time such as 07:30, or 2 07:30 on the second day',
  });
}
