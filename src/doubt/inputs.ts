import { refuse } from '../formula/index.js';
import type { Kind } from '../quantity/index.js';
import { shapeFor } from '../repair/case/admit.js';
import { keysOf, valueAt } from '../repair/case/place.js';
import { caseTable } from '../repair/case/table.js';
import type { Field, Fields } from '../repair/case/table-field.js';
import type { RepairCase } from '../repair/index.js';

/** A number that stands in a case. */
export interface NumericInput {
  /** `pipe.wallThickness`, `defect.profile[3].depth`. */
  readonly path: string;
  /** Kind of quantity, a plain number or a count. */
  readonly kind: Kind | 'number' | 'count';
  /** In the coherent SI unit. */
  readonly value: number;
}

/** What the library filled in of a table and what is no measure of the job. */
const NO_INPUTS: readonly string[] = ['lookedUp', 'confirmed'];

/**
 * Every number of a case, in the order of its table.
 *
 * @param repairCase as for `designRepair`
 */
export function numericInputs(repairCase: RepairCase): NumericInput[] {
  const { ...fields }: Fields = caseTable;
  for (const name of NO_INPUTS) Reflect.deleteProperty(fields, name);
  return inFields(fields, repairCase, '');
}

function inFields(fields: Fields, held: object, path: string): NumericInput[] {
  const given = held as Readonly<Record<string, unknown>>;
  return Object.entries(fields).flatMap(([key, field]) =>
    inField(field, given[key], path === '' ? key : `${path}.${key}`),
  );
}

function inField(field: Field, value: unknown, path: string): NumericInput[] {
  if (value === undefined || typeof value === 'string') return [];
  switch (field.kind) {
    case 'block':
      return inFields(field.fields, value as object, path);
    case 'variants':
      return inFields(
        field.variants[String((value as Record<string, unknown>)[field.by])] ?? {},
        value as object,
        path,
      );
    case 'either': {
      const shape = shapeFor(field, value);
      return shape === undefined ? [] : inField(shape, value, path);
    }
    case 'list':
      return (value as readonly unknown[]).flatMap((row, index) => inField(field.row, row, `${path}[${index}]`));
    case 'choice':
    case 'flag':
    case 'text':
    case 'name':
    case 'clock':
      return [];
    default:
      return typeof value === 'number' ? [{ path, kind: field.kind, value }] : [];
  }
}

/** The number at a path. @throws CalculationError `invalid-input` where none stands there */
export function inputAt(repairCase: RepairCase, path: string): NumericInput {
  const found = numericInputs(repairCase).find((each) => each.path === path);
  if (found !== undefined) return found;
  const held = valueAt(repairCase, path);
  const value = typeof held === 'object' ? 'no number' : (held ?? 'missing');
  refuse({
    code: 'invalid-input',
    parameter: path,
    value,
    unit: '',
    constraint: 'must be a number that the case holds',
  });
}

/**
 * A case with other numbers at some paths; all beside the way there is shared with the case that came in.
 *
 * @param repairCase which stays as it is
 * @param values the path of each field with its new number, in SI
 */
export function withInputs(
  repairCase: RepairCase,
  values: Iterable<readonly [path: string, value: number]>,
): RepairCase {
  let changed: unknown = repairCase;
  for (const [path, value] of values) changed = put(changed, keysOf(path), value);
  return changed as RepairCase;
}

function put(held: unknown, [key, ...rest]: readonly (string | number)[], value: number): unknown {
  if (key === undefined) return value;
  if (Array.isArray(held)) return held.map((row, index) => (index === key ? put(row, rest, value) : row));
  const holder = held as Readonly<Record<string, unknown>>;
  return { ...holder, [key]: put(holder[key], rest, value) };
}
