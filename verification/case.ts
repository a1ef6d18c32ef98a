import * as z from 'zod';
import { sources } from '../src/formula/index.js';

/**
 * The record of a verification case. Values are text exactly as printed, since the number of printed digits is what a
 * value is judged by.
 */

/** What backs the expected value of a case. */
export const caseClasses = [
  /** A standard's own or a government text, read. */
  'standard',
  'handbook',
  'dataset',
  /** Tests or output of another program. */
  'library',
  'web',
  /** Our own benchmark, reproduced by a second route. */
  'derivation',
  /** Common practice of the trade, no source. */
  'practice',
  /** A value from memory. */
  'recalled',
] as const;

export type CaseClass = (typeof caseClasses)[number];

const text = z.string().trim().min(1);
const identifier = z
  .string()
  .regex(/^[A-Za-z0-9][A-Za-z0-9.+_-]*$/u, 'an id holds letters, digits, dots, plus, - and _ only');
const formulaId = z.string().regex(/^[a-z]+\/[a-z0-9-]+$/u, 'a formula id is room/name');

/** What a row of a list holds: texts by column, or one text for a bare list. */
const row = z.union([text, z.record(z.string(), text)]);

/** An input: a text, the rows of a list, or the output of another formula. */
export type CaseInput =
  | string
  | readonly (string | Readonly<Record<string, string>>)[]
  | {
      readonly from: {
        readonly formula: string;
        readonly inputs: Readonly<Record<string, CaseInput>>;
        readonly output?: string | undefined;
      };
    };

const input: z.ZodType<CaseInput> = z.lazy(() =>
  z.union([
    text,
    z.array(row),
    z.strictObject({
      from: z.strictObject({ formula: formulaId, inputs: z.record(z.string(), input), output: text.optional() }),
    }),
  ]),
);

const FORMS = ['value', 'list', 'atLeast', 'atMost', 'word'] as const;

const expectation = z
  .strictObject({
    value: text.optional(),
    list: z.array(text).min(1).optional(),
    atLeast: text.optional(),
    atMost: text.optional(),
    word: text.optional(),
    /** Printed significant digits, where those of the text mislead. */
    digits: z.int().min(1).max(17).optional(),
    /** The print is cut, not rounded. */
    truncated: z.boolean().optional(),
    /** Absolute, in a unit of the value, and never without a reason. */
    tolerance: z.strictObject({ value: text, reason: text }).optional(),
    /** A known difference, such as a variant equation that must not be coded. */
    explained: text.optional(),
    note: text.optional(),
  })
  .refine((given) => FORMS.filter((form) => given[form] !== undefined).length === 1, {
    error: `an expectation has exactly one of ${FORMS.join(', ')}`,
  });

export type Expectation = z.infer<typeof expectation>;

const refusal = z.strictObject({ refused: z.enum(['invalid-input', 'outside-validity', 'no-solution']) });

export const caseRecord = z
  .strictObject({
    id: identifier,
    formula: formulaId,
    class: z.enum(caseClasses),
    source: z.strictObject({ key: text, locator: text, edition: text.optional() }).nullable(),
    /** The second route, in words, of a derivation. */
    route: text.optional(),
    inputs: z.record(z.string(), input),
    /** Inputs that are exact, though printed in few digits: a nominal size. They are not moved. */
    exact: z.array(text).optional(),
    /** Inputs that run through a list; the expected list is judged item by item. */
    vary: z.record(z.string(), z.array(text).min(1)).optional(),
    expect: z.union([refusal, z.record(z.string(), expectation)]),
    /** The published answer, where it is wrong; `expect` then holds the right one. */
    erratum: z.strictObject({ printed: text, explanation: text }).optional(),
    explained: text.optional(),
    note: text.optional(),
  })
  .superRefine((given, context) => {
    const complain = (path: string, message: string): void => {
      context.addIssue({ code: 'custom', path: [path], message });
    };
    const sourceless = given.class === 'practice' || given.class === 'derivation' || given.class === 'recalled';
    if (given.source === null && !sourceless) complain('source', `a case of class ${given.class} names its source`);
    if (given.source !== null && given.class === 'practice') complain('source', 'common practice has no source');
    if (given.class === 'derivation' && given.route === undefined)
      complain('route', 'a derivation says its second route');
    if (given.source !== null) {
      const known = Object.hasOwn(sources, given.source.key)
        ? sources[given.source.key as keyof typeof sources]
        : undefined;
      if (known === undefined) complain('source', `src/formula/sources.ts has no source ${given.source.key}`);
      else if (given.class === 'standard' && known.reached !== 'published') {
        complain('class', `${given.source.key} was not read in its own text, so the class cannot be standard`);
      }
    }
    const lengths = new Set(Object.values(given.vary ?? {}).map((values) => values.length));
    if (lengths.size > 1) complain('vary', 'inputs that vary together have lists of one length');
    const twice = Object.keys(given.vary ?? {}).filter((name) => Object.hasOwn(given.inputs, name));
    if (twice.length > 0) complain('vary', `${twice.join(', ')} stand in inputs too`);
  });

export type CaseRecord = z.infer<typeof caseRecord>;

/** A file of cases. */
export const caseFile = z.array(caseRecord).min(1);
