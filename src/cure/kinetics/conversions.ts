import { refuse, within } from '../../formula/index.js';

/** Refuses a pair of conversions that no cure can run between. */
export function checkConversions(start: number, end: number, startMustBePositive: boolean): void {
  within(start, 0, 1, 'startConversion', '');
  within(end, 0, 1, 'conversion', '');
  if (startMustBePositive && start === 0) startFromNothing(start);
  if (!(end < 1 && start <= end)) {
    refuse({
      code: 'invalid-input',
      parameter: 'conversion',
      value: end,
      unit: '',
      constraint: `must be from the conversion at the start, ${start}, up to, not including, 1`,
    });
  }
}

/** Refuses a start from exactly 0 for a law whose rate is 0 there. */
export function startFromNothing(start: number): never {
  refuse({
    code: 'no-solution',
    parameter: 'startConversion',
    value: start,
    unit: '',
    constraint: 'must be above 0: this law is autocatalytic and never starts by itself',
  });
}
