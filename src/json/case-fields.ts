import { wordOf } from '../repair/case/admit.js';
import type { Field, Fields } from '../repair/case/table-field.js';
import { documentTable, documentWordsAt } from './document-table.js';
import { exampleOf, expectedIn } from './expected.js';

/** A field of the case document, as a reader wants it listed. */
export interface CaseField {
  /** `pipe.wallThickness`; a row of a list is `defect.profile[].depth`. */
  readonly path: string;
  readonly required: boolean;
  /** What it is. */
  readonly says: string;
  /** What it takes, in words. */
  readonly expected: string;
  readonly example: unknown;
}

/** Every field of a case, in the order of the table; of what takes several shapes, the fields of each, once. */
export function caseFields(): CaseField[] {
  const found = new Map<string, CaseField>();
  list(documentTable, '', found);
  return [...found.values()];
}

function list(fields: Fields, path: string, found: Map<string, CaseField>): void {
  for (const [key, field] of Object.entries(fields)) {
    const at = path === '' ? key : `${path}.${key}`;
    add(field, at, found);
    within(field, at, found);
  }
}

function add(field: Field, path: string, found: Map<string, CaseField>): void {
  const before = found.get(path);
  const required = field.optional !== true && before?.required !== false;
  const example = exampleOf(field, path);
  found.set(path, { path, required, says: documentWordsAt(path)[1], expected: expectedIn(field), example });
}

function within(field: Field, path: string, found: Map<string, CaseField>): void {
  switch (field.kind) {
    case 'block':
      list(field.fields, path, found);
      break;
    case 'list':
      within(field.row, `${path}[]`, found);
      break;
    case 'either':
      for (const shape of field.shapes) within(shape, path, found);
      break;
    case 'variants':
      add(wordOf(field), `${path}.${field.by}`, found);
      for (const fields of Object.values(field.variants)) list(fields, path, found);
  }
}
