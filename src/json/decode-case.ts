import { readQuantity } from '../quantity/index.js';
import type { RepairCase } from '../repair/case/case.js';
import { CaseError, writtenPath } from './case-error.js';
import { caseSchema } from './case-schema.js';
import { contradictions } from './consistency.js';
import { explain } from './explain.js';
import { type LookUp, lookUp } from './look-up.js';
import { parseJson } from './parse-json.js';
import { eachQuantity } from './schema-walk.js';
import type { Typed, TypedMap } from './typed.js';

/** A case with what its document said beside it. */
export interface DecodedCase {
  readonly case: RepairCase;
  /** Every quantity as it was typed, with the kind that its field gave it. */
  readonly typed: TypedMap;
  /** What was taken from tables. */
  readonly lookUps: readonly LookUp[];
}

/**
 * Reads a case from a parsed JSON document, quantities as text with units.
 *
 * @throws CaseError with every issue at once, each a sentence; nothing is decoded by half
 */
export function decodeCase(document: unknown): DecodedCase {
  const parsed = caseSchema.safeParse(document);
  if (!parsed.success) throw new CaseError(explain(caseSchema, document, parsed.error.issues));
  const typed = typedIn(document);
  const found = lookUp(parsed.data, typed);
  if (found.issues.length > 0) throw new CaseError(found.issues);
  const issues = contradictions(found.case, document);
  if (issues.length > 0) throw new CaseError(issues);
  return { case: found.case, typed, lookUps: found.lookUps };
}

/**
 * Reads a case from JSON text.
 *
 * @throws CaseError where the text is not JSON, where an object holds a key twice, and as `decodeCase`
 */
export function parseCase(text: string): DecodedCase {
  return decodeCase(parseJson(text));
}

function typedIn(document: unknown): TypedMap {
  const typed = new Map<string, Typed>();
  eachQuantity(caseSchema, document, (path, kind, text) => {
    const reading = readQuantity(kind, text);
    if (reading.ok) typed.set(writtenPath(path), { text, unit: reading.unit, kind });
  });
  return typed;
}
