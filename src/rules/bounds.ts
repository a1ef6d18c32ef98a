import type { CoefficientShape } from './coefficient-table.js';

/** A bound that a number of a rule set breaks: how the sentence "it must ..." ends, and the bound itself. */
export interface BrokenBound {
  /** How the sentence "it must ..." ends; `{0}` stands for the bound. */
  readonly must: string;
  /** The bound, in the coherent SI unit; absent where none is a number. */
  readonly bound?: number;
}

/**
 * The first bound of a coefficient that a number breaks; nothing where it keeps them all.
 *
 * @param shape of the coefficient, with its bounds
 * @param value in SI
 */
export function brokenBound({ kind, above, from, below }: CoefficientShape, value: number): BrokenBound | undefined {
  if (!Number.isFinite(value)) return { must: 'be a finite number' };
  if (above !== undefined && !(value > above)) return { must: 'be above {0}', bound: above };
  if (from !== undefined && !(value >= from)) return { must: 'be at least {0}', bound: from };
  if (below !== undefined && !(value < below)) return { must: 'be below {0}', bound: below };
  return kind === 'count' && !Number.isSafeInteger(value) ? { must: 'be a whole number' } : undefined;
}
