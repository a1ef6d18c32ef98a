import { readFileSync } from 'node:fs';
import * as z from 'zod';

/** The look-ups for values of another hand, the empty ones too: what was asked, of what, and which cases came of it. */

const lookUpKinds = [
  'web pages',
  'public code by meaning',
  'exact words in public code',
  'names of repositories',
  'list of files',
  'file read',
] as const;

const text = z.string().trim().min(1);

const lookUp = z
  .strictObject({
    /** What was asked, in technical words. */
    words: text,
    corpus: z.enum(lookUpKinds),
    found: z.boolean(),
    /** Cases that rest on what it showed. */
    cases: z.array(text).min(1).optional(),
    note: text.optional(),
  })
  .refine(({ found, cases }) => found === (cases !== undefined), {
    error: 'a look-up that found something names its cases, and no other does',
  });

export type LookUp = z.infer<typeof lookUp>;

/** @throws ZodError for a look-up that has not its form */
export function readLookUps(): LookUp[] {
  return z
    .array(lookUp)
    .min(1)
    .parse(JSON.parse(readFileSync(new URL('look-ups.json', import.meta.url), 'utf8')));
}
