import type { EitherField, Field, Fields } from '../../../src/repair/case/table-field.js';
import type { Way } from './control.js';
import { shapeNames } from './shapes.js';

const NOT_STATED = 'not stated';
const NONE = 'none';
const STATED = 'as follows';

/** The ways in which a field may be given; none where there is but one, and that one is to fill it in. */
export function waysOf(field: Field, path: string): Way[] {
  const own = ownWays(field, path);
  const isChoice = field.none === true || field.kind === 'variants' || field.kind === 'either';
  if (!isChoice && !(field.optional === true && field.kind === 'block')) return [];
  const none = field.none === true ? [{ name: NONE, start: 'none' }] : [];
  return [{ name: NOT_STATED, start: undefined }, ...none, ...own];
}

function ownWays(field: Field, path: string): Way[] {
  if (field.kind === 'variants')
    return Object.keys(field.variants).map((word) => ({ name: word, start: { [field.by]: word } }));
  if (field.kind === 'either') return field.shapes.flatMap((shape, index) => waysOfShape(shape, index, path));
  return [{ name: STATED, start: startOf(field) }];
}

function waysOfShape(shape: EitherField['shapes'][number], index: number, path: string): Way[] {
  if (shape.kind === 'choice') return shape.words.map((word) => ({ name: String(word), start: word }));
  return [{ name: nameOfShape(path, index), start: startOf(shape) }];
}

function nameOfShape(path: string, index: number): string {
  const name = shapeNames[path]?.[index];
  if (name === undefined || name === '')
    throw new Error(`shape ${index} of ${path} has no words: a fault of this page`);
  return name;
}

function startOf(field: Field): unknown {
  if (field.kind === 'list') return [];
  if (field.kind !== 'block') return '';
  return field.when === undefined ? {} : { [field.when]: '' };
}

/** The way that a value takes, with what it holds: a field, the fields of a variant, or nothing where a word says it all. */
export function fieldOfWay(
  field: Field,
  value: unknown,
  path: string,
): readonly [string, (Field | Fields)?] | undefined {
  if (value === undefined) return [NOT_STATED];
  if (value === 'none' && field.none === true) return [NONE];
  if (field.kind === 'variants') return variantOf(field, value);
  if (field.kind === 'either') return shapeOf(field, value, path);
  return [STATED, field];
}

function variantOf({ by, variants }: Extract<Field, { kind: 'variants' }>, value: unknown) {
  const word = isObject(value) ? value[by] : undefined;
  return typeof word === 'string' && Object.hasOwn(variants, word)
    ? ([word, variants[word] ?? {}] as const)
    : undefined;
}

/** As the door tells the shapes apart, but that a text without a number yet is an amount to be. */
function shapeOf({ shapes }: EitherField, value: unknown, path: string): readonly [string, Field?] | undefined {
  for (const [index, shape] of shapes.entries()) {
    if (shape.kind === 'choice') {
      if (shape.words.includes(value as string)) return [String(value)];
    } else if (shape.kind === 'block') {
      if (isObject(value) && (shape.when === undefined || Object.hasOwn(value, shape.when)))
        return [nameOfShape(path, index), shape];
    } else if (!isObject(value)) return [nameOfShape(path, index), shape];
  }
  return undefined;
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
