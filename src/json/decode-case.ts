import type { RepairCase } from '../repair/case/case.js';
import { CaseError } from './case-error.js';
import { clashes } from './clashes.js';
import { readDocument } from './document-door.js';
import { type LookUp, lookUp } from './look-up.js';
import { parseJson } from './parse-json.js';
import type { TypedMap } from './typed.js';

/** A case with what its document said beside it. */
export interface DecodedCase {
  /** The case, quantities in SI. */
  readonly case: RepairCase;
  /** Every quantity as it was typed, with the kind that its field gave it. */
  readonly typed: TypedMap;
  /** What was taken from tables. */
  readonly lookUps: readonly LookUp[];
}

/**
 * Reads a case from a parsed JSON document, quantities as text with units.
 *
 * @param document as `JSON.parse` gives it
 * @throws CaseError with every issue at once, each a sentence; nothing is decoded by half
 */
export function decodeCase(document: unknown): DecodedCase {
  const { read, typed: asRead } = readDocument(document);
  const found = lookUp(read, asRead);
  const { typed } = found;
  if (found.issues.length > 0) throw new CaseError(found.issues);
  const issues = clashes(found.case, document, typed);
  if (issues.length > 0) throw new CaseError(issues);
  return { case: found.case, typed, lookUps: found.lookUps };
}

/**
 * Reads a case from JSON text.
 *
 * @param text the whole document
 * @throws CaseError where the text is not JSON, where an object holds a key twice, and as `decodeCase`
 */
export function parseCase(text: string): DecodedCase {
  return decodeCase(parseJson(text));
}
