import * as z from 'zod';
import type { Kind } from '../quantity/index.js';
import { type FieldNote, noteOf } from './field.js';

/** The schema without its `optional`. */
export function bare(schema: z.core.$ZodType): z.core.$ZodType {
  return schema instanceof z.ZodOptional ? bare(schema.unwrap()) : schema;
}

/** The schema of the value at a path of a document, choosing among the options of a union by what stands there. */
export function schemaAt(
  root: z.core.$ZodType,
  document: unknown,
  path: readonly PropertyKey[],
): z.core.$ZodType | undefined {
  let schema: z.core.$ZodType | undefined = root;
  let value = document;
  for (const key of path) {
    schema = schema && childOf(optionFor(schema, value), key);
    value = valueAt(value, [key]);
  }
  return schema && optionFor(schema, value);
}

/** What stands at a path of a document. */
export function valueAt(document: unknown, path: readonly PropertyKey[]): unknown {
  let value = document;
  for (const key of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Readonly<Record<PropertyKey, unknown>>)[key];
  }
  return value;
}

function childOf(schema: z.core.$ZodType, key: PropertyKey): z.core.$ZodType | undefined {
  if (schema instanceof z.ZodObject) return Object.hasOwn(schema.shape, key) ? schema.shape[String(key)] : undefined;
  if (schema instanceof z.ZodArray) return schema.element;
  return undefined;
}

/** Of a union, the option that the value is meant to be; of anything else, the schema itself. */
export function optionFor(schema: z.core.$ZodType, value: unknown): z.core.$ZodType {
  const plain = bare(schema);
  if (!(plain instanceof z.ZodUnion)) return plain;
  const options = plain.options.map(bare);
  let best = plain as z.core.$ZodType;
  let most = 0;
  for (const option of options) {
    const score = likeness(option, value);
    if (score > most) [best, most] = [option, score];
  }
  return best;
}

/** How much a value looks like what an option of a union takes: 0 is not at all. */
function likeness(option: z.core.$ZodType, value: unknown): number {
  if (!(option instanceof z.ZodObject)) {
    return typeof value === 'string' && !(option instanceof z.ZodLiteral) ? 1 : 0;
  }
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return 0;
  let score = 1;
  for (const [key, field] of Object.entries(option.shape)) {
    const held = valueAt(value, [key]);
    if (field instanceof z.ZodLiteral) score += field.values.has(held as never) ? 1000 : -1000;
    else if (held !== undefined) score += field instanceof z.ZodOptional ? 1 : 10;
  }
  return Math.max(score, 0);
}

/** What would pass at a schema, in words, with an example. */
export function describe(schema: z.core.$ZodType): FieldNote {
  const plain = bare(schema);
  const note = noteOf(plain);
  if (note !== undefined) return note;
  if (plain instanceof z.ZodLiteral) {
    const values = [...plain.values];
    return { expected: values.map((value) => JSON.stringify(value)).join(', '), example: values[0] };
  }
  if (plain instanceof z.ZodUnion) {
    const options = plain.options.map(describe);
    // The last option: where `none` is one, the example is not to tempt anybody into it.
    return { expected: options.map((option) => option.expected).join(', or '), example: options.at(-1)?.example };
  }
  if (plain instanceof z.ZodObject) {
    const required = Object.entries(plain.shape).filter(([, field]) => !(field instanceof z.ZodOptional));
    return {
      expected: `an object with ${required.map(([key]) => key).join(', ') || Object.keys(plain.shape).join(', ')}`,
      example: Object.fromEntries(required.map(([key, field]) => [key, describe(field).example])),
    };
  }
  return { expected: 'something else', example: undefined };
}

/** Calls `visit` for every text of a document that stands for a quantity. */
export function eachQuantity(
  schema: z.core.$ZodType,
  value: unknown,
  visit: (path: readonly PropertyKey[], kind: Kind, text: string) => void,
  path: readonly PropertyKey[] = [],
): void {
  const chosen = optionFor(schema, value);
  const kind = noteOf(chosen)?.kind;
  if (kind !== undefined && typeof value === 'string') visit(path, kind, value);
  if (chosen instanceof z.ZodArray && Array.isArray(value)) {
    for (const [index, row] of value.entries()) eachQuantity(chosen.element, row, visit, [...path, index]);
  }
  if (chosen instanceof z.ZodObject) {
    for (const [key, field] of Object.entries(chosen.shape)) {
      const held = valueAt(value, [key]);
      if (held !== undefined) eachQuantity(field, held, visit, [...path, key]);
    }
  }
}
