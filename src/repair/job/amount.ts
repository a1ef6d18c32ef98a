import type { Kind } from '../../quantity/index.js';

/** A number for people: what it is, its kind, its value in the coherent SI unit. */
export interface Amount {
  readonly name: string;
  readonly kind: Kind | 'number' | 'count';
  readonly value: number;
}

/** What is missing, why it is needed and who has it. */
export interface MissingInput {
  /** Path in the case: `laminate.energyReleaseRate`. */
  readonly field: string;
  readonly why: string;
  readonly askWhom: string;
}
