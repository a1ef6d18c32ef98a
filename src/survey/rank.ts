import type { GaugePressure, Time } from '../quantity/index.js';
import type { ScreenedRow } from './survey-row.js';

/** By what a row is ranked: the least first. */
export type Rank = readonly [pressure: number, timeLeft: number];

/**
 * The rank of a screened row: by its safe pressure at the end of life over its design pressure, then by the time left. What
 * has no such pressure stands before all that have one: a row that is refused or to check, since nobody knows, and a loss that
 * is too deep.
 *
 * @param row as screened
 * @param designPressure of the same row
 */
export function rankOf(
  { status, safePressureAtEndOfLife, timeLeft = 0 as Time }: ScreenedRow,
  designPressure: GaugePressure,
): Rank {
  if (status === 'refused' || status === 'to check' || safePressureAtEndOfLife === undefined)
    return [Number.NEGATIVE_INFINITY, timeLeft];
  return [safePressureAtEndOfLife / designPressure, timeLeft];
}

/**
 * Below zero where the one rank stands before the other.
 *
 * @param one of a row
 * @param other of another row
 */
export function compareRanks(one: Rank, other: Rank): number {
  if (one[0] !== other[0]) return one[0] < other[0] ? -1 : 1;
  return one[1] - other[1];
}
