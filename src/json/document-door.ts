import { readQuantity, siSymbol, unitOf, writeQuantity } from '../quantity/index.js';
import { admitWhole, type Door, type Problem } from '../repair/case/admit.js';
import { writtenPlace } from '../repair/case/place.js';
import { CaseError } from './case-error.js';
import { type CaseDocument, type CaseText, documentTable } from './document-table.js';
import { issueOf } from './issues.js';
import type { Typed, TypedMap } from './typed.js';

/** Quantities as text with a unit, read into SI; what was typed is kept by its path. */
export function textDoor(report: Door['report'], typed: Map<string, Typed>): Door {
  return {
    read: (kind, text, within, key) => {
      if (typeof text !== 'string') return undefined;
      const reading = readQuantity(kind, text);
      if (!reading.ok) return reading.problem;
      typed.set(writtenPlace({ within, key }), { text, unit: reading.unit, kind });
      return reading.quantity;
    },
    report,
  };
}

/** A document, each of its fields read by itself. */
export function readDocument(document: unknown): { readonly read: CaseDocument; readonly typed: TypedMap } {
  const typed = new Map<string, Typed>();
  return { read: admitted(document, (report) => textDoor(report, typed)) as CaseDocument, typed };
}

/** A document as text: each quantity in the unit that it was typed in where it was, else in SI. */
export function writeDocument(document: CaseDocument, typed: TypedMap): CaseText {
  const written = admitted(document, (report) => ({
    read: (_, value) => value,
    keep: (kind, value, within, key) => {
      const unit = typed.get(writtenPlace({ within, key }))?.unit;
      return writeQuantity(kind, value as never, unit !== undefined && unitOf(kind, unit) ? unit : siSymbol(kind));
    },
    report,
  }));
  return written as CaseText;
}

/** @throws CaseError with every issue at once */
function admitted(document: unknown, doorOf: (report: Door['report']) => Door): unknown {
  const problems: Problem[] = [];
  const copy = admitWhole(
    doorOf((problem) => problems.push(problem)),
    documentTable,
    document,
  );
  if (problems.length > 0) throw new CaseError(problems.map(issueOf));
  return copy;
}
