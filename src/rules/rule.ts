import type { Evidence } from '../formula/index.js';
import type { Kind } from '../quantity/index.js';

/** A value of a rule set, where it stands in the document, and what stands behind it. */
export interface Rule<T> {
  /** In the coherent SI unit. */
  readonly value: T;
  /** Clause, table or equation of the document; equation numbers are from memory. */
  readonly clause: string;
  /** Whether the document was seen, and what else stands behind the value. */
  readonly evidence: Evidence;
  /** Numbers of it that a user with the document at hand put in place of those of this library. */
  readonly confirmed?: readonly ConfirmedValue[] | undefined;
}

/** A number of a rule set as somebody who has the document reads it there. */
export interface Confirmation {
  /** Path of the number in the rule set: `overlap.minimum`, `defaultStrains.continuous.3[2].hoop`. */
  readonly path: string;
  /** In the coherent SI unit of its kind. */
  readonly value: number;
  /** Who read it. */
  readonly by: string;
  /** In which edition of the document. */
  readonly edition: string;
  /** What else there is to say of it. */
  readonly note?: string | undefined;
}

/** A confirmed number, beside the one that it takes the place of. */
export interface ConfirmedValue extends Confirmation {
  /** Kind of the number. */
  readonly kind: Kind | 'number' | 'count';
  /** The number that stood there before. */
  readonly instead: number;
  /** Whether it may make a repair thinner, shorter or wider in its use than the number before it. */
  readonly lessConservative: boolean;
}

/** A value that the document holds and nobody here has read. It has no default: a design that needs it asks for it. */
export interface UnknownRule {
  /** What is missing, and who has it. */
  readonly unknown: string;
  /** Where the document has it. */
  readonly clause: string;
}

/**
 * Whether the value of a rule is known.
 *
 * @param rule a rule of any set
 */
export function isKnown<T>(rule: Rule<T> | UnknownRule): rule is Rule<T> {
  return 'value' in rule;
}
