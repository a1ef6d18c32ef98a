import type { HourCheck } from './weather-check.js';

/** What a gate found of one climate. */
export interface JudgedClimate {
  readonly checks: readonly HourCheck[];
  /** Every check holds. */
  readonly holds: boolean;
}

/**
 * The climates that were judged by one set of limits, by the object that states them: many hours, and many starts, look
 * at one stretch of a forecast.
 *
 * @internal
 */
export type JudgedClimates = Map<object, JudgedClimate>;

/** A climate as it was judged before, or is now. */
export function judgedOnce<C extends object>(
  judged: JudgedClimates,
  climate: C,
  judge: (climate: C) => readonly HourCheck[],
): JudgedClimate {
  const before = judged.get(climate);
  if (before !== undefined) return before;
  const checks = judge(climate);
  const found = { checks, holds: checks.every(({ excess }) => excess <= 0) };
  judged.set(climate, found);
  return found;
}
