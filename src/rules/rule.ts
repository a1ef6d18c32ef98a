import type { Evidence } from '../formula/index.js';

/** A value of a rule set, where it stands in the document, and what stands behind it. */
export interface Rule<T> {
  readonly value: T;
  /** Clause, table or equation of the document; equation numbers are from memory. */
  readonly clause: string;
  readonly evidence: Evidence;
}

/** A value that the document holds and nobody here has read. It has no default: a design that needs it asks for it. */
export interface UnknownRule {
  /** What is missing, and who has it. */
  readonly unknown: string;
  readonly clause: string;
}

/** Whether the value of a rule is known. */
export function isKnown<T>(rule: Rule<T> | UnknownRule): rule is Rule<T> {
  return 'value' in rule;
}
