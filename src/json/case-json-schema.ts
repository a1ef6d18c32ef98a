import { PLAIN_LINE } from '../quantity/plain-text.js';
import { CLOCK } from '../repair/case/admit.js';
import type { AmountField, Field, Fields } from '../repair/case/table-field.js';
import { documentTable, documentWordsAt } from './document-table.js';
import { exampleOf, expectedIn } from './expected.js';
import { type QuantityField, quantityPattern, unitsInWords } from './quantity-pattern.js';

type Schema = Record<string, unknown>;

/**
 * JSON Schema (draft 2020-12) of a case as text: what an editor needs to complete and check a case file, and a form to build
 * its fields. Built from the table of the case. It refuses every slip within one field but what digits cannot say: what a
 * table does not hold, and bounds that no number of a unit meets roundly; what contradicts another field is the door's.
 */
export function caseJsonSchema(): Record<string, unknown> {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    $id: 'urn:hoopwright:case.schema',
    title: 'Repair case of hoopwright',
    ...objectOf(documentTable, ''),
  };
}

function objectOf(fields: Fields, path: string, by?: readonly [key: string, word: string]): Schema {
  const properties: Schema = by === undefined ? {} : { [by[0]]: { type: 'string', const: by[1] } };
  const required = by === undefined ? [] : [by[0]];
  for (const [key, field] of Object.entries(fields)) {
    properties[key] = schemaOf(field, path === '' ? key : `${path}.${key}`);
    if (field.optional !== true) required.push(key);
  }
  return { type: 'object', properties, required, additionalProperties: false };
}

function schemaOf(field: Field, path: string): Schema {
  const schema = plainly(field, path);
  if (field.none !== true) return schema;
  const none = { type: 'string', const: 'none', description: 'there is none' };
  return { anyOf: [none, schema] };
}

function plainly(field: Field, path: string): Schema {
  switch (field.kind) {
    case 'block':
      return objectOf(field.fields, path);
    case 'variants':
      return { anyOf: Object.entries(field.variants).map(([word, inner]) => objectOf(inner, path, [field.by, word])) };
    case 'either':
      return { anyOf: field.shapes.map((shape) => schemaOf(shape, path)) };
    case 'list':
      return {
        type: 'array',
        items: schemaOf(field.row, `${path}[]`),
        minItems: field.least ?? 0,
        ...said(field, path),
      };
    case 'choice':
      return { enum: field.words, ...said(field, path) };
    case 'flag':
      return { type: 'boolean', ...said(field, path) };
    case 'text':
      return { type: 'string', pattern: PLAIN_LINE.source, ...said(field, path) };
    case 'name':
      return {
        anyOf: [
          { type: 'string', pattern: PLAIN_LINE.source, ...said(field, path) },
          { type: 'number', ...said(field, path) },
        ],
      };
    case 'clock':
      return { type: 'string', pattern: CLOCK.source, ...said(field, path) };
    case 'number':
      return { type: 'number', ...bounds(field), ...said(field, path) };
    case 'count':
      return { type: 'integer', ...bounds(field), maximum: Number.MAX_SAFE_INTEGER, ...said(field, path) };
    default:
      return quantityOf(field as QuantityField, path);
  }
}

function quantityOf(field: QuantityField, path: string): Schema {
  const more = `, in ${unitsInWords(field.kind)}`;
  return { type: 'string', pattern: quantityPattern(field), maxLength: 200, ...said(field, path, more) };
}

/** What it is, what it takes, and an example that fits the other examples. */
function said(field: Field, path: string, more = ''): Schema {
  return {
    description: `${documentWordsAt(path)[1]}; ${expectedIn(field)}${more}`,
    examples: [exampleOf(field, path)],
  };
}

function bounds({ above, from, below, to }: AmountField): Schema {
  return {
    ...(above === undefined ? {} : { exclusiveMinimum: above }),
    ...(from === undefined ? {} : { minimum: from }),
    ...(below === undefined ? {} : { exclusiveMaximum: below }),
    ...(to === undefined ? {} : { maximum: to }),
  };
}
