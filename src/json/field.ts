import * as z from 'zod';
import {
  exampleOf,
  type Kind,
  type Quantity,
  readQuantity,
  siSymbol,
  units,
  writeQuantity,
} from '../quantity/index.js';

/** What a field holds, for error messages and for the echo of what was typed. */
export interface FieldNote {
  /** What would pass, in words: "a length above 0". */
  readonly expected: string;
  /** A value that would pass. */
  readonly example: unknown;
  /** Set where the text stands for a quantity. */
  readonly kind?: Kind;
}

/** Bounds of a number, in SI where it is a quantity. */
export interface Bounds {
  readonly above?: number;
  readonly from?: number;
  readonly below?: number;
  readonly to?: number;
}

const notes = new WeakMap<z.core.$ZodType, FieldNote>();

/** The note on a field, where it is a leaf of the schema. */
export function noteOf(schema: z.core.$ZodType): FieldNote | undefined {
  return notes.get(schema);
}

function noted<S extends z.core.$ZodType>(schema: S, note: FieldNote): S {
  notes.set(schema, note);
  return schema;
}

/** A name that is often a number: NPS 8, schedule 40. */
export function nameOrNumber(about: string, example: string) {
  const schema = z
    .union([z.string(), z.number()])
    .refine((name) => String(name).trim() !== '')
    .meta({ description: about, examples: [example] });
  return noted(schema, { expected: 'text or a number', example });
}

/** Text of the user: a title, a name. */
export function words(about: string, example: string) {
  const schema = z
    .string()
    .refine((text) => text.trim() !== '')
    .meta({ description: about, examples: [example] });
  return noted(schema, { expected: 'text that is not empty', example });
}

/** A time of day on the clock of the site. */
export function clock(about: string) {
  const schema = z
    .string()
    .regex(/^(?:[01]\d|2[0-3]):[0-5]\d$/u)
    .meta({ description: `${about}, as 07:30`, examples: ['07:30'] });
  return noted(schema, { expected: 'a time of day from "00:00" to "23:59"', example: '07:30' });
}

/** One of several words. */
export function choice<const T extends string>(about: string, choices: readonly T[]) {
  const schema = z.enum(choices).meta({ description: about });
  return noted(schema, { expected: `one of ${choices.map((word) => `"${word}"`).join(', ')}`, example: choices[0] });
}

/** True or false. */
export function flag(about: string) {
  return noted(z.boolean().meta({ description: about }), { expected: 'true or false', example: false });
}

/** A plain number, for what nobody writes in a unit. */
export function plainNumber(about: string, bounds: Bounds, example: number) {
  const schema = z
    .number()
    .refine((value) => outside(value, bounds) === undefined)
    .meta({ description: `${about}; a plain number ${boundsInWords(bounds)}`, examples: [example] });
  return noted(schema, { expected: `a plain number ${boundsInWords(bounds)}`, example });
}

/** A whole number. */
export function count(about: string, least: number, example: number) {
  const expected = `a whole number, ${least} or above`;
  const schema = z
    .number()
    .refine((value) => Number.isSafeInteger(value) && value >= least)
    .meta({ description: `${about}; ${expected}`, examples: [example] });
  return noted(schema, { expected, example });
}

/** Rows of one shape. */
export function list<S extends z.core.$ZodType>(
  about: string,
  row: S,
  least: number,
  expected: string,
  example: readonly unknown[],
) {
  const schema = z
    .array(row)
    .min(least)
    .meta({ description: about, examples: [example] });
  return noted(schema, { expected, example });
}

/** A quantity as text with a unit, such as `"8.18 mm"`; decodes to SI, encodes to the SI text. */
export function quantity<K extends Kind>(kind: K, about: string, bounds: Bounds = {}) {
  const field = quantityField(kind, about, bounds);
  const schema = z.codec(textOf(field), numberSchema<K>(), {
    decode: (text, context) => decoded(kind, field, bounds, text, context),
    encode: (value) => siText(kind, value),
  });
  return noted(schema, field);
}

/** A quantity as text, or the word `none`: for what must be stated even where there is none of it. */
export function quantityOrNone<K extends Kind>(kind: K, about: string, bounds: Bounds = {}) {
  const field = quantityField(kind, about, bounds, 'none');
  const schema = z.codec(textOf(field), z.union([z.literal('none'), numberSchema<K>()]), {
    decode: (text, context) => (text === 'none' ? 'none' : decoded(kind, field, bounds, text, context)),
    encode: (value) => (value === 'none' ? 'none' : siText(kind, value)),
  });
  return noted(schema, field);
}

interface QuantityNote extends FieldNote {
  readonly kind: Kind;
  readonly about: string;
}

function quantityField(kind: Kind, about: string, bounds: Bounds, word?: string): QuantityNote {
  const inBounds = boundsInWords(bounds);
  const called = `${/^[aeiou]/u.test(kind) ? 'an' : 'a'} ${kind}`;
  const amount = inBounds === '' ? called : `${called} ${inBounds.replace(/^at/u, 'of at')}`;
  const expected = `${amount} as text with a unit${word === undefined ? '' : `, or "${word}"`}`;
  return { kind, about, expected, example: firstExample(kind) };
}

/** The first of the examples that the reader of quantities gives for a kind. */
function firstExample(kind: Kind): string {
  return /^"([^"]*)"/u.exec(exampleOf(kind))?.[1] ?? `1 ${siSymbol(kind)}`;
}

function textOf({ kind, about, expected, example }: QuantityNote) {
  return z.string().meta({
    description: `${about}; ${expected}, in ${Object.keys(units[kind]).join(', ')}`,
    examples: [example],
  });
}

function numberSchema<K extends Kind>() {
  return z.custom<Quantity<K>>((value) => typeof value === 'number' && Number.isFinite(value));
}

function decoded<K extends Kind>(
  kind: K,
  { example }: FieldNote,
  bounds: Bounds,
  text: string,
  context: z.core.ParsePayload<string>,
): Quantity<K> {
  const refused = (message: string) => {
    context.issues.push({ code: 'custom', message, input: text });
    return z.NEVER;
  };
  const reading = readQuantity(kind, text);
  if (!reading.ok) return refused(`: ${reading.problem}`);
  const broken = outside(reading.quantity, bounds);
  if (broken !== undefined) {
    return refused(` is ${JSON.stringify(text)}; it must be ${broken}, for example ${JSON.stringify(example)}`);
  }
  // A minus zero would come back as a plain zero, and no pipe can tell the two apart.
  return (reading.quantity === 0 ? 0 : reading.quantity) as Quantity<K>;
}

function siText<K extends Kind>(kind: K, value: Quantity<K>): string {
  return writeQuantity(kind, value, siSymbol(kind));
}

/** The bounds in words, where `value` breaks them. */
function outside(value: number, bounds: Bounds): string | undefined {
  const { above = -Infinity, from = -Infinity, below = Infinity, to = Infinity } = bounds;
  return value > above && value >= from && value < below && value <= to ? undefined : boundsInWords(bounds);
}

/** "above 0", "at least 0 and below 1". */
function boundsInWords({ above, from, below, to }: Bounds): string {
  const parts: string[] = [];
  if (above !== undefined) parts.push(`above ${above}`);
  if (from !== undefined) parts.push(`at least ${from}`);
  if (below !== undefined) parts.push(`below ${below}`);
  if (to !== undefined) parts.push(`at most ${to}`);
  return parts.join(' and ');
}
