import { nonNegative, oneOf, type SourceKey, type SourceTag } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

/** A segment of a surface profile comparator. */
export interface ComparatorSegment {
  /** For steel blasted with grit or with shot. */
  readonly comparator: 'grit' | 'shot';
  /** Segment of the comparator, from the finest. */
  readonly segment: 1 | 2 | 3 | 4;
  /** Nominal height [m]. */
  readonly nominal: Length;
  /** Either way [m]; recalled. */
  readonly tolerance: Length;
  /** Standard that the segment is from. */
  readonly source: SourceKey;
  /** How the nominal height was reached. */
  readonly tag: SourceTag;
  /** How the tolerance was reached. */
  readonly toleranceTag: SourceTag;
}

const segment = (
  comparator: 'grit' | 'shot',
  number: 1 | 2 | 3 | 4,
  nominal: number,
  tolerance: number,
): ComparatorSegment => ({
  comparator,
  segment: number,
  nominal: (nominal / 1e6) as Length,
  tolerance: (tolerance / 1e6) as Length,
  source: 'iso-8503-1',
  tag: 'secondary',
  toleranceTag: 'recalled',
});

/** The segments of ISO 8503-1. */
export const comparatorSegments: readonly ComparatorSegment[] = [
  segment('grit', 1, 25, 3),
  segment('grit', 2, 60, 10),
  segment('grit', 3, 100, 15),
  segment('grit', 4, 150, 20),
  segment('shot', 1, 25, 3),
  segment('shot', 2, 40, 5),
  segment('shot', 3, 70, 10),
  segment('shot', 4, 100, 15),
];

/** Grade of a profile on the scale of its comparator. */
export type ProfileGrade = 'below fine' | 'fine' | 'medium' | 'coarse' | 'above coarse';

/**
 * Grade of a profile between the segments of its comparator: fine from segment 1 to below 2, medium from 2 to below 3,
 * coarse from 3 to below 4. Only for surfaces blasted to Sa 2 1/2 or Sa 3.
 *
 * @param comparator for grit or for shot, as the steel was blasted
 * @param profile as measured
 * @throws CalculationError `invalid-input`
 */
export function profileGrade(comparator: 'grit' | 'shot', profile: Length): ProfileGrade {
  oneOf(comparator, ['grit', 'shot'], 'comparator');
  nonNegative(profile, 'profile', 'm');
  const reached = comparatorSegments.filter((row) => row.comparator === comparator && row.nominal <= profile).length;
  return (['below fine', 'fine', 'medium', 'coarse', 'above coarse'] as const)[reached] ?? 'above coarse';
}
