import type { Amount, Line } from '../../quantity/index.js';

/** Fields of a case, each right by itself, that cannot all be right. */
export interface Contradiction {
  /** The field at fault: `defect.profile[3].depth`. */
  readonly path: string;
  /** How the sentence "it must ..." ends; its first amount is the limit. */
  readonly must: Line;
  /** The field that sets the limit, where it is one of the case. */
  readonly limit?: string;
  /** What would pass there; the limit itself passes where it is this very amount. */
  readonly passes?: Amount;
}

/** Takes note of a contradiction, or throws. */
export type Note = (found: Contradiction) => void;
