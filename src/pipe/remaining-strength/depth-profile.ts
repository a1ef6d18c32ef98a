import { finite, listOfRows, nonNegative, refuse } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';
import { checkDepth } from './part-wall-defect.js';

/** One point of a river-bottom profile: the deepest loss on the ring of the pipe at this position. */
export interface DepthPoint {
  /** Along the pipe [m]. */
  readonly position: Length;
  /** Metal lost there [m]. */
  readonly depth: Length;
}

/** Refuses a profile of fewer than two points, points out of order, and depths over 0.8 of the wall. */
export function checkDepthProfile(profile: readonly DepthPoint[], t: number, source: string): void {
  checkPointCount(profile);
  let previous = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < profile.length; i++) {
    const { position, depth } = profile[i] as DepthPoint;
    // Names are made only for a point that is refused: this runs for every point of a long profile.
    if (!(Number.isFinite(position) && position > previous)) checkPosition(position, previous, i);
    if (!(Number.isFinite(depth) && depth >= 0 && depth <= 0.8 * t))
      checkDepth(depth, t, 0.8, `profile[${i}].depth`, source);
    previous = position;
  }
}

/** Refuses what is not a list of points, and a profile of fewer than two. */
export function checkPointCount(profile: readonly unknown[]): void {
  listOfRows(profile, 'profile');
  if (profile.length >= 2) return;
  const constraint = 'must have at least 2 points';
  refuse({ code: 'invalid-input', parameter: 'profile', value: profile.length, unit: 'points', constraint });
}

/** Refuses a position that does not lie beyond the one before it. */
export function checkPosition(position: number, previous: number, i: number): void {
  finite(position, `profile[${i}].position`, 'm');
  if (position > previous) return;
  const constraint = `must lie beyond the point before it, ${previous} m`;
  refuse({ code: 'invalid-input', parameter: `profile[${i}].position`, value: position, unit: 'm', constraint });
}

/** Lost area from the first point to each point, by the trapezoid rule, so that any sub-length costs one subtraction. */
export function lossUpTo(positions: Float64Array, depths: Float64Array): Float64Array {
  const area = new Float64Array(positions.length);
  for (let i = 1; i < positions.length; i++) {
    const width = (positions[i] as number) - (positions[i - 1] as number);
    area[i] = (area[i - 1] as number) + width * (((depths[i - 1] as number) + (depths[i] as number)) / 2);
  }
  return area;
}

/** Lost area between two points, summed from the first of them, without the rounding of a difference of sums. */
export function lossBetween(positions: Float64Array, depths: Float64Array, from: number, to: number): number {
  let area = 0;
  for (let i = from + 1; i <= to; i++) {
    const width = (positions[i] as number) - (positions[i - 1] as number);
    area += width * (((depths[i - 1] as number) + (depths[i] as number)) / 2);
  }
  nonNegative(area, 'profile', 'm2');
  return area;
}
