import type { Kind } from '../../quantity/index.js';
import { PLAIN_LINE } from '../../quantity/plain-text.js';
import type { Place } from './place.js';
import type { AmountField, EitherField, Field, Fields, Span, VariantsField } from './table-field.js';

/** What is wrong at one place of a case. */
export type Problem = { readonly place: Place | undefined } & (
  | { readonly sort: 'missing'; readonly field: Field }
  /** Nothing that the field takes; `why` says what a text lacks. */
  | { readonly sort: 'unfit'; readonly field: Field; readonly value: unknown; readonly why?: string | undefined }
  | { readonly sort: 'outside'; readonly field: AmountField; readonly value: unknown }
  | { readonly sort: 'unknown'; readonly fields: Fields; readonly value: unknown }
);

/** How one door reads a case. */
export interface Door {
  /** The number that stands for a quantity; text that says why it cannot be read; `undefined` for what is none at all. */
  readonly read: (kind: Kind, value: unknown, within: Place | undefined, key: string | number) => unknown;
  /** What goes into the copy in place of a quantity. */
  readonly keep?: (kind: Kind, value: number, within: Place | undefined, key: string | number) => unknown;
  readonly report: (problem: Problem) => void;
  /** Takes note of a number that may be right and lies outside the usual span of its field. */
  readonly unusual?: (kind: AmountField['kind'], usual: Span, value: number, place: Place) => void;
}

/** A copy of a whole case, or the report that it is none. */
export function admitWhole(door: Door, fields: Fields, held: unknown): unknown {
  if (isObject(held)) return admitFields(door, fields, held, undefined);
  door.report({ sort: 'unfit', place: undefined, field: { kind: 'block', fields }, value: held });
  return held;
}

/**
 * A copy of what `held` holds, field by field as the table has it; nothing of it is shared with what came in. Whatever the
 * table does not allow is reported, and its place in the copy means nothing.
 */
function admitFields(door: Door, fields: Fields, held: object, place: Place | undefined, by?: string): object {
  const given = held as Readonly<Record<string, unknown>>;
  const copy: Record<string, unknown> = {};
  if (by !== undefined) copy[by] = given[by];
  for (const key in fields) {
    const field = fields[key] as Field;
    const value = given[key];
    if (value !== undefined) copy[key] = admit(door, field, value, place, key);
    else if (field.optional !== true) door.report({ sort: 'missing', place: { within: place, key }, field });
  }
  for (const key in given) {
    if (Object.hasOwn(fields, key) || key === by || given[key] === undefined) continue;
    door.report({ sort: 'unknown', place: { within: place, key }, fields, value: given[key] });
  }
  return copy;
}

/** A copy of what one field holds. */
export function admit(
  door: Door,
  field: Field,
  value: unknown,
  within: Place | undefined,
  key: string | number,
): unknown {
  if (value === 'none' && field.none === true) return value;
  switch (field.kind) {
    case 'block':
      if (isObject(value)) return admitFields(door, field.fields, value, { within, key });
      break;
    case 'variants':
      if (isObject(value)) return admitVariant(door, field, value, { within, key });
      break;
    case 'either': {
      const shape = shapeFor(field, value);
      if (shape !== undefined) return admit(door, shape, value, within, key);
      break;
    }
    case 'list':
      if (Array.isArray(value) && value.length >= (field.least ?? 0))
        return admitRows(door, field.row, value, { within, key });
      break;
    case 'choice':
      if (field.words.includes(value as string)) return value;
      break;
    case 'flag':
      if (typeof value === 'boolean') return value;
      break;
    case 'text':
      if (isText(value, PLAIN_LINE)) return value;
      break;
    case 'name':
      if (isText(value, PLAIN_LINE) || isFiniteNumber(value)) return value;
      break;
    case 'clock':
      if (isText(value, CLOCK)) return value;
      break;
    default:
      return admitAmount(door, field, value, within, key);
  }
  door.report({ sort: 'unfit', place: { within, key }, field, value });
  return value;
}

function admitVariant(door: Door, field: VariantsField, held: object, place: Place): object {
  const word = (held as Readonly<Record<string, unknown>>)[field.by];
  const fields = typeof word === 'string' && Object.hasOwn(field.variants, word) ? field.variants[word] : undefined;
  if (fields !== undefined) return admitFields(door, fields, held, place, field.by);
  const told = { place: { within: place, key: field.by }, field: wordOf(field) };
  door.report(word === undefined ? { sort: 'missing', ...told } : { sort: 'unfit', ...told, value: word });
  return held;
}

function admitRows(door: Door, row: Field, rows: readonly unknown[], place: Place): unknown[] {
  const copy: unknown[] = [];
  for (const [index, held] of rows.entries()) copy.push(admit(door, row, held, place, index));
  return copy;
}

function admitAmount(door: Door, field: AmountField, value: unknown, within: Place | undefined, key: string | number) {
  const { kind, usual } = field;
  const plain = kind === 'number' || kind === 'count';
  const number = plain ? value : door.read(kind, value, within, key);
  if (!isFiniteNumber(number)) {
    const why = !plain && typeof number === 'string' ? number : undefined;
    door.report({ sort: 'unfit', place: { within, key }, field, value, why });
    return value;
  }
  if (!inBounds(field, number)) door.report({ sort: 'outside', place: { within, key }, field, value });
  else if (usual !== undefined && (number < usual[0] || number > usual[1]))
    door.unusual?.(kind, usual, number, { within, key });
  // A minus zero would come back from text as a plain zero, and no pipe can tell the two apart.
  const kept = number === 0 ? 0 : number;
  return plain || door.keep === undefined ? kept : door.keep(kind, kept, within, key);
}

/** The field at which the variants are told apart. */
export function wordOf({ variants }: VariantsField): Field {
  return { kind: 'choice', words: Object.keys(variants) };
}

/** Of several shapes, the one that a value is meant to have. */
export function shapeFor({ shapes }: EitherField, value: unknown): Field | undefined {
  let orWord = false;
  for (const shape of shapes) {
    if (shape.kind === 'choice') {
      if (shape.words.includes(value as string)) return shape;
      orWord = true;
    } else if (shape.kind !== 'block') {
      if (!isObject(value) && (!orWord || hasNumber(value))) return shape;
    } else if (isObject(value) && (shape.when === undefined || Object.hasOwn(value, shape.when))) return shape;
  }
  return undefined;
}

/** Where a word may stand in place of an amount, what holds no number is neither. */
function hasNumber(value: unknown): boolean {
  return typeof value === 'number' || (typeof value === 'string' && /\d/u.test(value));
}

/** Whether a number lies within the hard bounds of its field. */
export function inBounds({ kind, above, from, below, to }: AmountField, value: number): boolean {
  if (above !== undefined && !(value > above)) return false;
  if (from !== undefined && !(value >= from)) return false;
  if (below !== undefined && !(value < below)) return false;
  if (to !== undefined && !(value <= to)) return false;
  return kind !== 'count' || Number.isSafeInteger(value);
}

/** A time of day. */
export const CLOCK = /^(?:[01]\d|2[0-3]):[0-5]\d$/u;

function isText(value: unknown, pattern: RegExp): boolean {
  return typeof value === 'string' && pattern.test(value);
}

function isFiniteNumber(value: unknown): value is number {
  return Number.isFinite(value);
}

function isObject(value: unknown): value is object {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
