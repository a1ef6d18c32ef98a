import * as z from 'zod';
import { type CaseIssue, shown, writtenPath } from './case-error.js';
import { noteOf } from './field.js';
import { nearMiss } from './near-miss.js';
import { bare, describe, optionFor, schemaAt, valueAt } from './schema-walk.js';

type Path = readonly PropertyKey[];

/** Turns what zod found into sentences of this library: where, what stands there, what was expected, an example. */
export function explain(root: z.core.$ZodType, document: unknown, found: readonly z.core.$ZodIssue[]): CaseIssue[] {
  return found.flatMap((issue) => explainOne(root, document, issue, issue.path));
}

function explainOne(root: z.core.$ZodType, document: unknown, issue: z.core.$ZodIssue, path: Path): CaseIssue[] {
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) => unknownField(root, document, path, key));
    case 'invalid_union':
      return explainUnion(root, document, issue, path);
    case 'custom': {
      const schema = schemaAt(root, document, path);
      const note = schema && noteOf(schema);
      if (note?.kind === undefined) break;
      const value = valueAt(document, path);
      return [{ path: writtenPath(path), value, ...note, message: `${writtenPath(path)}${issue.message}` }];
    }
  }
  return [unfit(root, document, path)];
}

/** Of a union, only the option that the value is meant to be is explained. */
function explainUnion(
  root: z.core.$ZodType,
  document: unknown,
  issue: z.core.$ZodIssueInvalidUnion,
  path: Path,
): CaseIssue[] {
  const value = valueAt(document, path);
  const union = unionAt(root, document, path);
  const chosen = union && optionFor(union, value);
  const index = union?.options.map(bare).indexOf(chosen as never) ?? -1;
  const issues = issue.errors[index];
  if (issues === undefined) return [unfit(root, document, path)];
  return issues.flatMap((inner) => explainOne(root, document, inner, [...path, ...inner.path]));
}

/** The union at a path, before an option is chosen. */
function unionAt(root: z.core.$ZodType, document: unknown, path: Path): z.ZodUnion | undefined {
  const parent = path.length === 0 ? undefined : schemaAt(root, document, path.slice(0, -1));
  const key = path.at(-1);
  const schema =
    parent instanceof z.ZodObject
      ? parent.shape[String(key)]
      : parent instanceof z.ZodArray
        ? parent.element
        : parent === undefined
          ? root
          : undefined;
  const plain = schema && bare(schema);
  return plain instanceof z.ZodUnion ? plain : undefined;
}

/** A field that is missing, or that holds what cannot stand there. */
function unfit(root: z.core.$ZodType, document: unknown, path: Path): CaseIssue {
  const value = valueAt(document, path);
  const parent = schemaAt(root, document, path.slice(0, -1));
  const schema =
    unionAt(root, document, path) ??
    schemaAt(root, document, path) ??
    // An unknown word at the key that tells the options of a union apart: its words are those of all options.
    discriminator(parent, path.at(-1));
  const { expected, example } =
    schema === undefined ? { expected: 'something else', example: undefined } : describe(schema);
  const where = writtenPath(path) || 'the case';
  const is = value === undefined ? 'is missing' : `is ${shown(value)}`;
  const near = typeof value === 'string' && schema !== undefined ? nearMiss(value, wordsOf(schema)) : undefined;
  const hint =
    near === undefined ? `, for example ${JSON.stringify(example)}` : `; did you mean ${JSON.stringify(near)}?`;
  const message = `${where} ${is}; expected ${expected}${hint}`;
  return { path: writtenPath(path), value, expected: expected, example: near ?? example, message };
}

function discriminator(parent: z.core.$ZodType | undefined, key: PropertyKey | undefined): z.core.$ZodType | undefined {
  if (!(parent instanceof z.ZodDiscriminatedUnion)) return undefined;
  const literals = parent.options.map((option) => (option as z.ZodObject).shape[String(key)]);
  return literals.every((literal) => literal instanceof z.ZodLiteral)
    ? z.literal(literals.flatMap((literal) => [...literal.values]))
    : undefined;
}

function wordsOf(schema: z.core.$ZodType): string[] {
  const plain = bare(schema);
  if (plain instanceof z.ZodEnum) return plain.options.map(String);
  if (plain instanceof z.ZodLiteral) return [...plain.values].map(String);
  if (plain instanceof z.ZodUnion) return plain.options.flatMap(wordsOf);
  return [];
}

function unknownField(root: z.core.$ZodType, document: unknown, path: Path, key: string): CaseIssue {
  const object = schemaAt(root, document, path);
  const shape = object instanceof z.ZodObject ? object.shape : {};
  const value = valueAt(document, [...path, key]);
  const near = nearMiss(key, Object.keys(shape));
  const place = path.length === 0 ? 'a case' : writtenPath(path);
  const field = near === undefined ? undefined : shape[near];
  const { expected, example } =
    field === undefined
      ? { expected: `no such field; ${place} holds ${Object.keys(shape).join(', ')}`, example: undefined }
      : describe(field);
  const where = writtenPath([...path, key]);
  const message =
    near === undefined
      ? `${where} (${shown(value)}) is not a field of ${place}, which holds ${Object.keys(shape).join(', ')}; leave it out`
      : `${where} (${shown(value)}) is not a field of ${place}; did you mean "${near}"? It takes ${expected}, for example ${JSON.stringify(example)}`;
  return { path: where, value, expected: expected, ...(field === undefined ? {} : { example }), message };
}
