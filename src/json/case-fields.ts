import * as z from 'zod';
import { caseSchema } from './case-schema.js';
import { bare, describe } from './schema-walk.js';

/** A field of the case document, as a reader of the schema wants it listed. */
export interface CaseField {
  /** `pipe.wallThickness`; a row of a list is `defect.profile[].depth`. */
  readonly path: string;
  readonly required: boolean;
  /** What it takes, in words. */
  readonly expected: string;
  readonly example: unknown;
}

/** Every field of a case, in the order of the schema; of what takes several shapes, the fields of each. */
export function caseFields(): CaseField[] {
  return fieldsOf(caseSchema, '');
}

function fieldsOf(schema: z.core.$ZodType, path: string): CaseField[] {
  const plain = bare(schema);
  if (plain instanceof z.ZodUnion) return plain.options.flatMap((option) => fieldsOf(option, path));
  if (plain instanceof z.ZodArray) return fieldsOf(plain.element, `${path}[]`);
  if (!(plain instanceof z.ZodObject)) return [];
  return Object.entries(plain.shape).flatMap(([key, field]) => {
    const at = path === '' ? key : `${path}.${key}`;
    const { expected, example } = describe(field);
    return [{ path: at, required: !(field instanceof z.ZodOptional), expected, example }, ...fieldsOf(field, at)];
  });
}
