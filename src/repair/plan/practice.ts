import type { Length, Time } from '../../quantity/index.js';

/**
 * Figures of the trade for the work on site, without a source: printed beside the design's own, never in their place.
 * Those of leak seals are `sealPractice`.
 */
export const workPractice = {
  /** Kneading or stirring to one even colour; longer eats into the working time. */
  mixing: 300 as Time,
  /** Soaking of tape that water activates. */
  soaking: 10 as Time,
  /** Filler over the leak, and elsewhere, all round. */
  fillerOverLeak: 0.01 as Length,
  fillerElsewhere: 0.005 as Length,
  /** The wrap begins this far before the leak. */
  wrapBeforeLeak: 0.1 as Length,
  /** From preparation to the first resin. */
  openTime: 14_400 as Time,
} as const;
