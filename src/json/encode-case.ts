import * as z from 'zod';
import { type Quantity, unitOf, writeQuantity } from '../quantity/index.js';
import type { RepairCase } from '../repair/case/case.js';
import { CaseError } from './case-error.js';
import { type CaseDocument, type CaseText, caseSchema } from './case-schema.js';
import { explain } from './explain.js';
import { type LookUp, lookUp } from './look-up.js';
import { valueAt } from './schema-walk.js';
import type { TypedMap } from './typed.js';

/** What encoding needs: the case, and what `decodeCase` said beside it, where the case came from a document. */
export interface CaseToEncode {
  readonly case: RepairCase;
  readonly typed?: TypedMap | undefined;
  readonly lookUps?: readonly LookUp[] | undefined;
}

/**
 * Writes a case as a JSON document. Each quantity becomes the shortest text, in the unit it was typed in, that reads back
 * to the same float64; where it was not typed, or where no such text exists, the SI text. A row of a table is named again
 * as long as it still gives the same values.
 *
 * @throws CaseError where the case holds what no document can say
 */
export function encodeCase({ case: repairCase, typed = new Map(), lookUps = [] }: CaseToEncode): CaseText {
  const document = withRows(repairCase, lookUps);
  const encoded = z.safeEncode(caseSchema, document);
  if (!encoded.success) throw new CaseError(explain(caseSchema, document, encoded.error.issues));
  const text = encoded.data;
  for (const [path, { kind, unit }] of typed) {
    const keys = keysOf(path);
    const value = valueAt(document, keys);
    if (typeof value !== 'number' || unitOf(kind, unit) === undefined) continue;
    put(text, keys, writeQuantity(kind, value as Quantity<typeof kind>, unit));
  }
  return text;
}

/** Writes a case as JSON text. */
export function writeCase(toEncode: CaseToEncode): string {
  return `${JSON.stringify(encodeCase(toEncode), null, 2)}\n`;
}

/** The case as a document, with rows of tables by name where they still give what the case holds. */
function withRows(repairCase: RepairCase, lookUps: readonly LookUp[]): CaseDocument {
  let document = numbersOnly(repairCase);
  for (const { asked, filled } of lookUps) {
    const candidate = structuredClone(document);
    for (const { path } of filled) put(candidate, keysOf(path), undefined);
    for (const { path, value } of asked) put(candidate, keysOf(path), value);
    const again = lookUp(candidate);
    const same = filled.every(({ path }) => valueAt(again.case, keysOf(path)) === valueAt(repairCase, keysOf(path)));
    if (again.issues.length === 0 && same) document = candidate;
  }
  return document;
}

function numbersOnly({ lookedUp: _, ...document }: RepairCase): CaseDocument {
  return structuredClone(document) as CaseDocument;
}

function keysOf(path: string): (string | number)[] {
  return [...path.matchAll(/\[(\d+)\]|[^.[\]]+/gu)].map(([key, index]) => (index === undefined ? key : Number(index)));
}

/** Sets the value at a path, or takes the field away where the value is `undefined`. */
function put(document: unknown, keys: readonly (string | number)[], value: unknown): void {
  const holder = valueAt(document, keys.slice(0, -1));
  const last = keys.at(-1);
  if (typeof holder !== 'object' || holder === null || last === undefined) return;
  if (value === undefined) Reflect.deleteProperty(holder, last);
  else Reflect.set(holder, last, value);
}
