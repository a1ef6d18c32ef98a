import * as z from 'zod';
import { type Kind, type Quantity, siSymbol, units, writeQuantity } from '../quantity/index.js';
import { PLAIN_LINE } from '../quantity/plain-text.js';
import { admit, CLOCK } from '../repair/case/admit.js';
import type { AmountField, Field, Fields } from '../repair/case/table-field.js';
import { textDoor } from './document-door.js';
import { type CaseDocument, type CaseText, documentTable, documentWordsAt } from './document-table.js';
import { exampleOf, expectedIn } from './expected.js';
import { issueOf } from './issues.js';

/** The schema of a case, both ways, built from its table: text with units in the document, SI in the decoded case. */
export const caseSchema = /* @__PURE__ */ object(documentTable, '') as unknown as z.ZodType<CaseDocument, CaseText>;

function object(fields: Fields, path: string, by?: readonly [key: string, word: string]): z.ZodObject {
  const shape: Record<string, z.ZodType> = by === undefined ? {} : { [by[0]]: z.literal(by[1]) };
  for (const [key, field] of Object.entries(fields)) {
    const schema = schemaOf(field, path === '' ? key : `${path}.${key}`);
    shape[key] = field.optional === true ? schema.optional() : schema;
  }
  return z.strictObject(shape);
}

function schemaOf(field: Field, path: string): z.ZodType {
  const schema = plain(field, path);
  return field.none === true ? z.union([z.literal('none'), schema]) : schema;
}

function plain(field: Field, path: string): z.ZodType {
  switch (field.kind) {
    case 'block':
      return object(field.fields, path);
    case 'variants':
      return z.union(Object.entries(field.variants).map(([word, inner]) => object(inner, path, [field.by, word])));
    case 'either':
      return z.union(field.shapes.map((shape) => schemaOf(shape, path)));
    case 'list':
      return noted(z.array(schemaOf(field.row, `${path}[]`)).min(field.least ?? 0), field, path);
    case 'choice':
      return noted(z.literal(field.words as string[]), field, path);
    case 'flag':
      return noted(z.boolean(), field, path);
    case 'text':
      return noted(z.string().regex(PLAIN_LINE), field, path);
    case 'name':
      return z.union([z.string().regex(PLAIN_LINE), z.number()].map((schema) => noted(schema, field, path)));
    case 'clock':
      return noted(z.string().regex(CLOCK), field, path);
    case 'number':
      return noted(bounded(z.number(), field), field, path);
    case 'count':
      return noted(bounded(z.int(), field), field, path);
    default:
      return quantity(field.kind, field, path);
  }
}

function noted<S extends z.ZodType>(schema: S, field: Field, path: string, more = ''): S {
  const description = `${documentWordsAt(path)[1]}; ${expectedIn(field)}${more}`;
  return schema.meta({ description, examples: [exampleOf(field, path)] });
}

function bounded(schema: z.ZodNumber, { above, from, below, to }: AmountField): z.ZodNumber {
  let inside = schema;
  if (above !== undefined) inside = inside.gt(above);
  if (from !== undefined) inside = inside.gte(from);
  if (below !== undefined) inside = inside.lt(below);
  if (to !== undefined) inside = inside.lte(to);
  return inside;
}

/** A quantity as text with a unit; decodes to SI, encodes to the SI text. */
function quantity(kind: Kind, field: AmountField, path: string): z.ZodType {
  const text = noted(z.string(), field, path, `, in ${Object.keys(units[kind]).join(', ')}`);
  const number = z.custom<Quantity<Kind>>((value) => typeof value === 'number' && Number.isFinite(value));
  return z.codec(text, number, {
    decode: (typed, context) => {
      const refused = context.issues.length;
      const door = textDoor(
        (problem) => context.issues.push({ code: 'custom', message: issueOf(problem).message, input: typed }),
        new Map(),
      );
      const value = admit(door, field, typed, undefined, path);
      return context.issues.length > refused ? z.NEVER : (value as Quantity<Kind>);
    },
    encode: (value) => writeQuantity(kind, value, siSymbol(kind)),
  });
}
