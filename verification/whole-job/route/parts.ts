import type { NoLaminate } from './criteria.js';
import type { Extent } from './extent.js';
import type { LaminateFigures } from './laminate.js';
import type { SealFigures } from './leak-seal.js';
import type { Line } from './line-at-work.js';
import type { Found } from './pipe-as-found.js';
import type { Strength } from './remaining-strength.js';
import type { Schedule } from './schedule.js';
import type { Sheet, Tape } from './wrap.js';

/** What was found of a job, as far as it got. */
export interface Parts {
  readonly found: Found;
  readonly strength?: Strength | undefined;
  readonly line: Line;
  readonly seal?: SealFigures | undefined;
  readonly laminate: LaminateFigures | NoLaminate;
  readonly extent?: Extent | undefined;
  readonly wrap?: Tape | Sheet | undefined;
  readonly wrapLength?: number | undefined;
  readonly schedule?: Schedule | undefined;
  readonly mixing: readonly number[];
  readonly bandsLaid?: number;
  /** Pressure that the laid laminate resists on the day of the test. */
  readonly onTheDay?: number;
}
