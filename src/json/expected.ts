import { expectedOf } from '../repair/case/expected.js';
import type { Field, Fields } from '../repair/case/table-field.js';
import { documentWordsAt } from './document-table.js';

/** What a field of a document takes, in words. */
export function expectedIn(field: Field): string {
  return expectedOf(field, () => 'as text with a unit');
}

/** A value that the door takes at this place: the field's own, or one put together from those of its fields. */
export function exampleOf(field: Field, path: string): unknown {
  switch (field.kind) {
    case 'block':
      return exampleBlock(field.fields, path);
    case 'variants': {
      const word = documentWordsAt(`${path}.${field.by}`)[2] as string;
      return { [field.by]: word, ...exampleBlock(field.variants[word] ?? {}, path) };
    }
    case 'list':
      return documentWordsAt(path)[2] ?? [exampleOf(field.row, `${path}[]`)];
    case 'either':
      return documentWordsAt(path)[2] ?? exampleOf(field.shapes[0] as Field, path);
    default:
      return documentWordsAt(path)[2];
  }
}

function exampleBlock(fields: Fields, path: string): Record<string, unknown> {
  const example: Record<string, unknown> = {};
  for (const [key, field] of Object.entries(fields)) {
    if (field.optional !== true) example[key] = exampleOf(field, path === '' ? key : `${path}.${key}`);
  }
  return example;
}
