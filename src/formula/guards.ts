import { refuse } from './calculation-error.js';

// Number.isFinite comes first: null, text and lists would pass a comparison, null as 0.

/** Refuses all but finite numbers above zero. */
export function positive(value: number, parameter: string, unit: string): void {
  if (!(Number.isFinite(value) && value > 0)) invalid(value, parameter, unit, 'must be a finite number above 0');
}

/** Refuses all but finite numbers from zero upward. */
export function nonNegative(value: number, parameter: string, unit: string): void {
  if (!(Number.isFinite(value) && value >= 0)) invalid(value, parameter, unit, 'must be a finite number, 0 or above');
}

/** Refuses NaN and the infinities. */
export function finite(value: number, parameter: string, unit: string): void {
  if (!Number.isFinite(value)) invalid(value, parameter, unit, 'must be a finite number');
}

/** Refuses all but numbers from `low` to `high`, both included. */
export function within(value: number, low: number, high: number, parameter: string, unit: string): void {
  if (!(Number.isFinite(value) && value >= low && value <= high))
    invalid(value, parameter, unit, `must be from ${low} to ${high}`);
}

/** Refuses all but fractions from 0 up to, not including, 1. */
export function properFraction(value: number, parameter: string): void {
  if (!(Number.isFinite(value) && value >= 0 && value < 1))
    invalid(value, parameter, '', 'must be from 0 up to, not including, 1');
}

/** Refuses all but whole numbers from `least` upward. */
export function wholeNumber(value: number, least: number, parameter: string): void {
  if (!(Number.isSafeInteger(value) && value >= least))
    invalid(value, parameter, '', `must be a whole number, ${least} or above`);
}

/** Refuses values that are not below `limit`; `what` names the limit in the user's words. */
export function below(value: number, limit: number, what: string, parameter: string, unit: string): void {
  if (!(Number.isFinite(value) && value < limit))
    invalid(value, parameter, unit, `must be below ${what}, {limit}`, limit);
}

/** Refuses values below `limit`; `what` names the limit in the user's words. */
export function atLeast(value: number, limit: number, what: string, parameter: string, unit: string): void {
  if (!(Number.isFinite(value) && value >= limit)) {
    invalid(value, parameter, unit, `must be at least ${what}, {limit}`, limit);
  }
}

/** Refuses values above `limit`; `what` names the limit in the user's words. */
export function atMost(value: number, limit: number, what: string, parameter: string, unit: string): void {
  if (!(Number.isFinite(value) && value <= limit))
    invalid(value, parameter, unit, `must be at most ${what}, {limit}`, limit);
}

/** Refuses words that are not among the choices. */
export function oneOf<T extends string>(value: T, choices: readonly T[], parameter: string): void {
  if (!choices.includes(value)) invalid(value, parameter, '', `must be one of ${choices.join(', ')}`);
}

/** Refuses all but a list whose rows are objects; the columns and the number of rows are for the formula to check. */
export function listOfRows(list: readonly unknown[], parameter: string): void {
  if (!Array.isArray(list)) invalid(inWords(list), parameter, '', 'must be a list of rows');
  for (let i = 0; i < list.length; i++) {
    const row = list[i];
    if (typeof row !== 'object' || row === null)
      invalid(row, `${parameter}[${i}]`, '', 'must be a row that gives its columns by name');
  }
}

/** Objects have no text of their own to show in a sentence. */
function inWords(value: unknown): unknown {
  return typeof value === 'object' && value !== null ? 'an object' : value;
}

function invalid(value: unknown, parameter: string, unit: string, constraint: string, limit?: number): never {
  refuse({ code: 'invalid-input', parameter, value, unit, constraint, ...(limit === undefined ? {} : { limit }) });
}
