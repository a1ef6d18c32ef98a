import type { RepairCase } from '../repair/case/case.js';
import { keysOf, valueAt } from '../repair/case/place.js';
import { writeConfirmed } from './confirmed.js';
import { writeDocument } from './document-door.js';
import type { CaseDocument, CaseText } from './document-table.js';
import { type LookUp, lookUp } from './look-up.js';
import type { TypedMap } from './typed.js';

/** What encoding needs: the case, and what `decodeCase` said beside it, where the case came from a document. */
export interface CaseToEncode {
  /** The case. */
  readonly case: RepairCase;
  /** Texts as they were typed, so that units come back. */
  readonly typed?: TypedMap | undefined;
  /** Rows of tables that the document named. */
  readonly lookUps?: readonly LookUp[] | undefined;
}

/**
 * Writes a case as a JSON document. Each quantity becomes the shortest text, in the unit it was typed in, that reads back
 * to the same float64; where it was not typed, or where no such text exists, the SI text. A row of a table is named again
 * as long as it still gives the same values.
 *
 * @param toEncode the case, with what its document said beside it
 * @throws CaseError where the case holds what no document can say
 */
export function encodeCase({ case: repairCase, typed = new Map(), lookUps = [] }: CaseToEncode): CaseText {
  return writeDocument(withRows(repairCase, lookUps, typed), typed);
}

/**
 * Writes a case as JSON text.
 *
 * @param toEncode the case, with what its document said beside it
 */
export function writeCase(toEncode: CaseToEncode): string {
  return `${JSON.stringify(encodeCase(toEncode), null, 2)}\n`;
}

/** The case as a document, with rows of tables by name where they still give what the case holds. */
function withRows(repairCase: RepairCase, lookUps: readonly LookUp[], typed: TypedMap): CaseDocument {
  let document = numbersOnly(repairCase, typed);
  for (const { asked, filled } of lookUps) {
    const candidate = structuredClone(document);
    for (const { path } of filled) put(candidate, path, undefined);
    for (const { path, value } of asked) put(candidate, path, value);
    const again = lookUp(candidate);
    const same = filled.every(({ path }) => valueAt(again.case, path) === valueAt(repairCase, path));
    if (again.issues.length === 0 && same) document = candidate;
  }
  return document;
}

function numbersOnly({ lookedUp: _, confirmed, ...document }: RepairCase, typed: TypedMap): CaseDocument {
  const copy = structuredClone(document) as Omit<CaseDocument, 'confirmed'>;
  return confirmed === undefined ? copy : { ...copy, confirmed: writeConfirmed(confirmed, typed) };
}

/** Sets the field at a path of names, or takes the field away where the value is `undefined`. */
function put(document: unknown, path: string, value: unknown): void {
  const last = keysOf(path).at(-1);
  const holder = valueAt(document, path.slice(0, path.lastIndexOf('.')));
  if (typeof holder !== 'object' || holder === null || last === undefined) return;
  if (value === undefined) Reflect.deleteProperty(holder, last);
  else Reflect.set(holder, last, value);
}
