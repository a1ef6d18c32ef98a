import { type Recorder, step } from '../../formula/index.js';
import { gapAtEndOfLife, gapPastNeighbours, neighbourReach } from '../../pipe/index.js';
import type { CorrosionRate, Length } from '../../quantity/index.js';
import type { RepairCase } from '../case/case.js';

/** Along the pipe and round it. */
export interface BothWays {
  readonly along: Length;
  readonly round: Length;
}

export const ALONG = 'along the pipe';
export const ROUND = 'round the pipe';

/** Two losses act as one unless they are far enough apart one way or the other (DNV-RP-F101, interaction). */
export function isWithin(gaps: BothWays, spacing: BothWays): boolean {
  return gaps.along <= spacing.along && gaps.round <= spacing.round;
}

/** What is left of the gaps between two losses by the end of the life. */
export function gapsThen(repairCase: RepairCase, { along, round }: BothWays, recorder: Recorder | undefined): BothWays {
  return { along: gapThen(repairCase, along, recorder, ALONG), round: gapThen(repairCase, round, recorder, ROUND) };
}

export function gapThen(
  { defect: { growth }, repair: { life } }: RepairCase,
  gap: Length,
  recorder: Recorder | undefined,
  way: string,
): Length {
  const rate = growth === 'none' ? (0 as CorrosionRate) : growth.length;
  return step(recorder, 'pipe/gap-at-end-of-life', gapAtEndOfLife, { gap, rate, life }, way);
}

export function gapPast(recorder: Recorder | undefined, gap: Length, reach: Length, way: string): Length {
  return step(recorder, 'pipe/gap-past-neighbours', gapPastNeighbours, { gap, reach }, way);
}

export function reachOf(recorder: Recorder | undefined, gap: Length, extent: Length, way: string): Length {
  return step(recorder, 'pipe/neighbour-reach', neighbourReach, { gap, extent }, way);
}

/** The farthest of some reaches; none reaches nowhere. */
export function farthest(reaches: readonly Length[]): Length {
  return Math.max(0, ...reaches) as Length;
}

/** The two farthest reaches; of one alone the second is nothing. */
export function twoFarthest(reaches: readonly Length[]): { readonly farthest: Length; readonly second: Length } {
  const first = farthest(reaches);
  return { farthest: first, second: farthest(reaches.toSpliced(reaches.indexOf(first), 1)) };
}
