import type { LookedUp, PipeMaterial, RepairCase } from '../repair/case.js';
import type { CaseIssue } from './case-error.js';
import type { CaseDocument } from './case-schema.js';

/** What a document asked of a table, and what the table answered. */
export interface LookUp {
  /** The fields that name the row, as they stand in the document. */
  readonly asked: readonly Entry[];
  /** The fields of the case that were filled from it; quantities in SI. */
  readonly filled: readonly Entry[];
}

export interface Entry {
  readonly path: string;
  readonly value: unknown;
}

export function lookUp(document: CaseDocument): { case: RepairCase; lookUps: LookUp[]; issues: CaseIssue[] } {
  return { case: document as unknown as RepairCase, lookUps: [], issues: [] };
}
