import { documentWordsAt } from '../../../src/json/document-table.js';
import { exampleOf } from '../../../src/json/expected.js';
import { exampleOf as exampleOfKind, preferredUnit, readQuantity, units } from '../../../src/quantity/index.js';
import { isKind } from '../../../src/quantity/units/index.js';
import type { AmountField, BlockField, Field, Fields, ListField } from '../../../src/repair/case/table-field.js';
import { boxesOf } from './amount-text.js';
import type { ChoiceControl, Control, Must, RowsControl, TicksControl } from './control.js';
import { usualText } from './usual.js';
import { fieldOfWay, waysOf } from './ways.js';

/** The controls of a form, from the table of the case and what a document holds so far. */
export function controlsOf(fields: Fields, held: unknown, path = ''): Control[] {
  return Object.entries(fields).map(([key, field]) => controlAt(field, memberOf(held, key), below(path, key)));
}

function controlAt(field: Field, value: unknown, path: string): Control {
  const ways = waysOf(field, path);
  if (ways.length === 0) return plainControl(field, value, path, false);
  const [chosen = '', inner] = fieldOfWay(field, value, path) ?? [];
  return {
    sort: 'ways',
    ...said(field, path),
    ways,
    chosen,
    isValue: isValue(field),
    inside: inner === undefined ? [] : insideOf(inner, value, path),
  };
}

function isValue(field: Field): boolean {
  if (field.kind === 'either') return field.shapes.every(isValue);
  return field.kind !== 'block' && field.kind !== 'variants' && field.kind !== 'list';
}

/** The controls of one way: the fields of a block stand for themselves, anything else once more under its own name. */
function insideOf(inner: Field | Fields, value: unknown, path: string): Control[] {
  if (!isField(inner)) return controlsOf(inner, value, path);
  if (inner.kind === 'block') return controlsOf(inner.fields, value, path);
  return [plainControl(inner, value, path, true)];
}

function plainControl(field: Field, value: unknown, path: string, keepsPlace: boolean): Control {
  const leaf = { ...said(field, path), keepsPlace, example: asText(exampleOf(field, path)) };
  switch (field.kind) {
    case 'block':
      return { sort: 'group', ...said(field, path), inside: controlsOf(field.fields, value, path) };
    case 'list':
      return listControl(field, value, path);
    case 'choice':
      return { sort: 'choice', ...leaf, ...chosenOf(field.words.map(optionOf), value) };
    case 'flag':
      return { sort: 'choice', ...leaf, ...chosenOf(yesOrNo, value) };
    case 'text':
    case 'name':
    case 'clock':
      return { sort: field.kind, ...leaf, text: asText(value), usual: '' };
    case 'number':
    case 'count':
      return { sort: 'number', ...leaf, text: asText(value), usual: usualText(field, '') };
    case 'variants':
    case 'either':
      throw new Error(`${path} takes several shapes and is reached by none of them: a fault of this page`);
    default:
      return amountControl(field, value, leaf);
  }
}

type LeafWords = ReturnType<typeof said> & { readonly keepsPlace: boolean; readonly example: string };

function amountControl(field: AmountField, value: unknown, leaf: LeafWords): Control {
  const { kind } = field;
  if (kind === 'number' || kind === 'count') throw new Error('a plain number has no unit');
  const { number, unit } = boxesOf(kind, asText(value));
  // The example of a field that takes several shapes may be one of another shape.
  const own = readQuantity(kind, leaf.example).ok;
  const shown = unit !== '' ? unit : own ? boxesOf(kind, leaf.example).unit : preferredUnit(kind, '', { system: 'si' });
  const example = own ? leaf.example : exampleOfKind(kind).replaceAll('"', '');
  return {
    sort: 'amount',
    ...leaf,
    example,
    kind,
    number,
    unit,
    units: Object.keys(units[kind]),
    usual: usualText(field, shown),
  };
}

function listControl(field: ListField, value: unknown, path: string): TicksControl | RowsControl {
  const rows: readonly unknown[] = Array.isArray(value) ? value : [];
  if (field.row.kind === 'choice')
    return {
      sort: 'ticks',
      ...said(field, path),
      options: field.row.words,
      ticked: rows,
      isNone: Array.isArray(value) && rows.length === 0,
    };
  const { fields } = field.row as BlockField;
  return {
    sort: 'rows',
    ...said(field, path),
    held: rows,
    rows: rows.map((row, index) => controlsOf(fields, row, `${path}[${index}]`)),
    start: emptyRow(fields, rows.at(-1)),
  };
}

/** A row without numbers, in the units of the last one. */
function emptyRow(fields: Fields, last: unknown): Record<string, unknown> {
  const row: Record<string, unknown> = {};
  for (const [key, { kind }] of Object.entries(fields)) {
    if (!isKind(kind)) continue;
    const { unit } = boxesOf(kind, asText(memberOf(last, key)));
    if (unit !== '') row[key] = ` ${unit}`;
  }
  return row;
}

function said(field: Field, path: string): { path: string; label: string; says: string; must: Must } {
  const [label, says] = documentWordsAt(path);
  return { path, label, says, must: mustOf(field) };
}

function mustOf({ optional, needed }: Field): Must {
  return needed ?? (optional === true ? 'optional' : 'required');
}

export const yesOrNo = [
  { value: true, words: 'yes' },
  { value: false, words: 'no' },
] as const;

export function chosenOf(options: ChoiceControl['options'], value: unknown): Pick<ChoiceControl, 'options' | 'text'> {
  return { options, text: options.find((each) => each.value === value)?.words ?? asText(value) };
}

function optionOf(value: string | number): { value: unknown; words: string } {
  return { value, words: String(value) };
}

export function asText(value: unknown): string {
  if (value === undefined) return '';
  return typeof value === 'string' ? value : JSON.stringify(value);
}

function memberOf(held: unknown, key: string): unknown {
  if (typeof held !== 'object' || held === null || !Object.hasOwn(held, key)) return undefined;
  return (held as Readonly<Record<string, unknown>>)[key];
}

function below(path: string, key: string): string {
  return path === '' ? key : `${path}.${key}`;
}

function isField(inner: Field | Fields): inner is Field {
  return typeof inner['kind'] === 'string';
}
