import * as z from 'zod';
import { caseSchema } from './case-schema.js';

/** JSON Schema (draft 2020-12) of a case as text: what an editor needs to complete and check a case file. */
export function caseJsonSchema(): Record<string, unknown> {
  return {
    title: 'Repair case of hoopwright',
    ...z.toJSONSchema(caseSchema, { io: 'input', target: 'draft-2020-12' }),
  };
}
