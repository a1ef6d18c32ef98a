import { wordOf } from '../repair/case/admit.js';
import type { EitherField, Field, Fields } from '../repair/case/table-field.js';
import { documentTable, documentWordsAt } from './document-table.js';
import { exampleOf, expectedIn } from './expected.js';

/** A field of the case document, as a reader wants it listed. */
export interface CaseField {
  /** `pipe.wallThickness`; a row of a list is `defect.profile[].depth`. */
  readonly path: string;
  /** Whether it must be there wherever the part that it belongs to is. */
  readonly required: boolean;
  /** Not there, and yet the numbers of a design wait for it, or its verdict while the numbers stand. */
  readonly needed?: 'for numbers' | 'to sign';
  /** Where the part takes several shapes: those that have this field, as `form tape`. */
  readonly when?: string;
  /** What it is. */
  readonly says: string;
  /** What it takes, in words. */
  readonly expected: string;
  /** A value that passes. */
  readonly example: unknown;
}

/** Every field of a case, in the order of the table; of what takes several shapes, the fields of each, once. */
export function caseFields(): CaseField[] {
  return fieldsOf(documentTable, '');
}

function fieldsOf(fields: Fields, path: string): CaseField[] {
  return Object.entries(fields).flatMap(([key, field]) => {
    const at = path === '' ? key : `${path}.${key}`;
    return [described(field, at), ...below(field, at)];
  });
}

function described(field: Field, path: string): CaseField {
  const [, says] = documentWordsAt(path);
  return {
    path,
    required: field.optional !== true,
    ...(field.needed === undefined ? {} : { needed: field.needed }),
    says,
    expected: expectedIn(field),
    example: exampleOf(field, path),
  };
}

function below(field: Field, path: string): CaseField[] {
  switch (field.kind) {
    case 'block':
      return fieldsOf(field.fields, path);
    case 'list':
      return below(field.row, `${path}[]`);
    case 'either':
      return merged('with', shapesOf(field, path));
    case 'variants': {
      const shapes = Object.entries(field.variants).map(([word, fields]) => [word, fieldsOf(fields, path)] as const);
      return [described(wordOf(field), `${path}.${field.by}`), ...merged(field.by, shapes)];
    }
    default:
      return [];
  }
}

type Shape = readonly [name: string, fields: readonly CaseField[]];

/** The shapes that are blocks, each called by the key by which it is known, or by its first. */
function shapesOf({ shapes }: EitherField, path: string): Shape[] {
  return shapes.flatMap((shape): Shape[] => {
    if (shape.kind !== 'block') return [];
    return [[shape.when ?? Object.keys(shape.fields)[0] ?? '', fieldsOf(shape.fields, path)]];
  });
}

/** The fields of several shapes, each once; what not every shape has says which have it. */
function merged(by: string, shapes: readonly Shape[]): CaseField[] {
  const all = new Map(shapes.flatMap(([, fields]) => fields).map((field) => [field.path, field]));
  return [...all.values()].map((field) => {
    const having = shapes.filter(([, fields]) => fields.some(({ path }) => path === field.path));
    if (having.length === shapes.length) {
      const required = having.every(([, fields]) => fields.some((each) => each.path === field.path && each.required));
      return { ...field, required };
    }
    return { ...field, when: `${by} ${having.map(([name]) => name).join(' or ')}` };
  });
}
