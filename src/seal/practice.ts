import type { Length } from '../quantity/index.js';

/**
 * What the trade uses for leak seals, without a source: figures to hold an input against, or to show beside it. None is a
 * default, since each bears on what holds the leak.
 */
export const sealPractice = {
  /** Putty or pad over the defect, in size; the trade does not say whether of area or of diameter. */
  padMultiple: 3,
  /** Margin of the pad beyond the hole on every side: 25 mm. */
  padMargin: 0.025 as Length,
  /** Stainless steel sheet under the band: 0.3 to 0.4 mm. */
  sheetThickness: [0.0003 as Length, 0.0004 as Length],
  /** Banded seals serve pipe from 50 mm upward. */
  leastPipeDiameter: 0.05 as Length,
} as const;
