import { documentTable } from '../../src/json/document-table.js';
import { exampleOf } from '../../src/json/expected.js';
import { decodeCase } from '../../src/json/index.js';
import { siSymbol, units } from '../../src/quantity/index.js';
import { shapeFor } from '../../src/repair/case/admit.js';
import type { RepairCase } from '../../src/repair/case/case.js';
import { caseTable } from '../../src/repair/case/table.js';
import type { Field, Fields } from '../../src/repair/case/table-field.js';
import { coefficientTable, patternOf } from '../../src/rules/index.js';

// biome-ignore lint/suspicious/noExplicitAny: tests break cases on purpose, also in ways that no type allows.
export type Loose = any;

/** Words for the places where a case takes one shape or another. */
export interface Shapes {
  readonly form?: 'tape' | 'sheet';
  readonly mechanism?: 'two-part reaction' | 'moisture';
  readonly phase?: 'liquid' | 'gas';
  readonly state?: 'under pressure' | 'static head' | 'empty, dry, isolated, vented';
}

/**
 * A document that holds every field there is, optional ones too, each with the example of its own words; of several shapes
 * the one that is asked for. The diameter stands straight, so the circumference is left out.
 */
export function fullDocument(shapes: Shapes = {}): Loose {
  const document = filled(documentTable, '', shapes);
  delete (document['pipe'] as Loose).circumference;
  // What leaves through the hole is what the line carries.
  if (shapes.phase !== undefined) (document['service'] as Loose).phase = shapes.phase;
  (document['pipe'] as Loose).material = filled(caseTable.pipe.fields.material.fields, 'pipe.material', shapes);
  return document;
}

function filled(fields: Fields, path: string, shapes: Shapes): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(fields).map(([key, field]) => {
      const at = path === '' ? key : `${path}.${key}`;
      return [key, filledField(field, at, shapes)];
    }),
  );
}

function filledField(field: Field, path: string, shapes: Shapes): unknown {
  if (field.kind === 'block') return filled(field.fields, path, shapes);
  if (field.kind !== 'variants') return exampleOf(field, path);
  const word = shapes[field.by as keyof Shapes] ?? (exampleOf(field, path) as Record<string, string>)[field.by] ?? '';
  return { [field.by]: word, ...filled(field.variants[word] ?? {}, path, shapes) };
}

/** Shapes that between them hold every field of the table. */
export const fullShapes: readonly Shapes[] = [
  {},
  { form: 'sheet', mechanism: 'moisture', phase: 'gas', state: 'under pressure' },
  { state: 'empty, dry, isolated, vented' },
];

/** Cases that between them hold every field of the table. */
export function fullCases(): readonly (readonly [name: string, RepairCase])[] {
  return fullShapes.map((shapes) => {
    const name = Object.values(shapes).join(', ') || 'of the examples';
    return [name, decodeCase(fullDocument(shapes)).case];
  });
}

/** The document that says what a case in SI says, whatever stands in it: each number of a quantity with its SI unit. */
export function asDocument(repairCase: unknown): Loose {
  const document = textOf({ kind: 'block', fields: caseTable }, repairCase) as Loose;
  if (Array.isArray(document?.confirmed)) document.confirmed = document.confirmed.map(confirmedText);
  return document;
}

/** The kind of a number of the rule set hangs on its path. */
function confirmedText(row: Loose): unknown {
  if (typeof row?.path !== 'string' || typeof row.value !== 'number') return row;
  const kind = coefficientTable.get(patternOf(row.path))?.kind ?? 'number';
  return { ...row, value: textOf({ kind }, row.value) };
}

function textOf(field: Field, value: unknown): unknown {
  if (typeof value === 'number') {
    const kind = (field.kind === 'either' ? (shapeFor(field, value)?.kind ?? '') : field.kind) as keyof typeof units;
    return Object.hasOwn(units, kind) ? `${value} ${siSymbol(kind)}` : value;
  }
  if (Array.isArray(value)) return field.kind === 'list' ? value.map((row) => textOf(field.row, row)) : value;
  if (typeof value !== 'object' || value === null) return value;
  const fields = fieldsFor(field, value);
  return Object.fromEntries(
    Object.entries(value).map(([key, held]) => {
      const inner = Object.hasOwn(fields, key) ? fields[key] : undefined;
      return [key, inner === undefined ? held : textOf(inner, held)];
    }),
  );
}

function fieldsFor(field: Field, held: object): Fields {
  const shape = field.kind === 'either' ? shapeFor(field, held) : field;
  if (shape?.kind === 'block') return shape.fields;
  if (shape?.kind !== 'variants') return {};
  return shape.variants[String((held as Record<string, unknown>)[shape.by])] ?? {};
}

export type Path = readonly (string | number)[];

/** Every place of a value, holders and leaves, in order. */
export function placesIn(value: unknown, path: Path = []): Path[] {
  if (typeof value !== 'object' || value === null) return [path];
  const keys = Array.isArray(value) ? value.map((_, index) => index) : Object.keys(value);
  const own = path.length === 0 ? [] : [path];
  return [...own, ...keys.flatMap((key) => placesIn((value as Loose)[key], [...path, key]))];
}

/** A copy in which a place holds another value; without one the field is taken away. */
export function changed(value: unknown, path: Path, ...to: [] | [unknown]): Loose {
  const copy = structuredClone(value) as Loose;
  let holder = copy;
  for (const key of path.slice(0, -1)) {
    if (typeof holder !== 'object' || holder === null) return copy;
    holder = holder[key];
  }
  const key = path.at(-1) ?? '';
  if (typeof holder !== 'object' || holder === null) return copy;
  if (to.length === 1)
    Object.defineProperty(holder, key, { value: to[0], enumerable: true, configurable: true, writable: true });
  else if (Array.isArray(holder)) holder.splice(Number(key), 1);
  else delete holder[key];
  return copy;
}
