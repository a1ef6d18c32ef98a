import type { Length } from '../../quantity/index.js';
import type { PassDesign, RollDesign } from '../design/design-work.js';

/** Tape or sheet as it lies on the pipe. */
export interface Laid {
  readonly length: Length;
  readonly stagger: Length;
  readonly passes: readonly PassDesign[];
  /** Empty where there are too many to list. */
  readonly rolls: readonly RollDesign[];
}
