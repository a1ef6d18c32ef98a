import { describe, expect, expectTypeOf, it } from 'vitest';
import type { Quantity } from '../../src/quantity/index.js';
import type { RepairCase } from '../../src/repair/case/case.js';
import { type CaseByTable, caseTable } from '../../src/repair/case/table.js';
import type { AmountField, Field, Fields } from '../../src/repair/case/table-field.js';
import { type PathsIn, wordsAt } from '../../src/repair/case/words.js';
import { materialWords } from '../../src/repair/case/words-materials.js';
import { pipeWords } from '../../src/repair/case/words-pipe.js';
import { workWords } from '../../src/repair/case/words-work.js';
import { practice } from '../../src/rules/index.js';
import { fullCases, type Loose } from '../json/full-document.js';

/** Every field of a table with its path, holders included; a row of a list is `defect.profile[]`. */
function fieldsIn(fields: Fields, path = ''): [path: string, field: Field][] {
  return Object.entries(fields).flatMap(([key, field]) => withInner(path === '' ? key : `${path}.${key}`, field));
}

function withInner(path: string, field: Field): [string, Field][] {
  return [[path, field], ...inner(path, field)];
}

function inner(path: string, field: Field): [string, Field][] {
  switch (field.kind) {
    case 'block':
      return fieldsIn(field.fields, path);
    case 'list':
      return field.row.kind === 'block' ? inner(`${path}[]`, field.row) : withInner(`${path}[]`, field.row);
    case 'either':
      return field.shapes.flatMap((shape) => (shape.kind === 'block' ? inner(path, shape) : [[path, shape]]));
    case 'variants':
      return Object.values(field.variants).flatMap((fields) => fieldsIn(fields, path));
    default:
      return [];
  }
}

const all = fieldsIn(caseTable);

/** The path of every field of a type, its holders included; a row of a list is `defect.profile[]`. */
type Paths<T> = T extends object
  ? { [K in keyof T & string]-?: K | `${K}${Below<Exclude<T[K], undefined>>}` }[keyof T & string]
  : never;

type Below<T> = T extends { readonly '~kind': string }
  ? never
  : T extends readonly (infer Row)[]
    ? Row extends object
      ? `[].${Paths<Row>}`
      : '[]'
    : T extends object
      ? `.${Paths<T>}`
      : never;

describe('the table of the case', () => {
  it('has the very paths of the type that is written by hand', () => {
    expectTypeOf<PathsIn<typeof caseTable>>().toEqualTypeOf<Paths<RepairCase>>();
  });

  it('has the kind, the words and the optionality that the type has, field by field', () => {
    expectTypeOf<CaseByTable>().toExtend<RepairCase>();
    expectTypeOf<RepairCase>().toExtend<CaseByTable>();
  });

  it('would not let a kind, a word or a missing field pass', () => {
    type Pipe = CaseByTable['pipe'];
    type With<T> = Omit<CaseByTable, 'pipe'> & { readonly pipe: Omit<Pipe, keyof T> & T };
    expectTypeOf<With<{ readonly wallThickness: Quantity<'stress'> }>>().not.toExtend<RepairCase>();
    expectTypeOf<With<{ readonly wallThickness?: Quantity<'length'> }>>().not.toExtend<RepairCase>();
    expectTypeOf<Omit<CaseByTable, 'basis'> & { readonly basis: 'EN 1' }>().not.toExtend<RepairCase>();
    expectTypeOf<RepairCase>().not.toExtend<With<{ readonly outsideDiameter: Quantity<'length'> }>>();
  });

  it('has a usual span within the hard bounds for every quantity, and for no other field', () => {
    for (const [path, field] of all) {
      // What such a number is hangs on the row beside it.
      if (!isAmount(field) || path === 'lookedUp[].value' || path === 'confirmed[].value') {
        expect('usual' in field, path).toBe(false);
        continue;
      }
      const { usual = [Number.NaN, Number.NaN], above, from, below, to } = field;
      const [least, most] = usual;
      expect(least, path).toBeLessThan(most);
      expect(least, path).toBeGreaterThanOrEqual(from ?? Number.NEGATIVE_INFINITY);
      expect(most, path).toBeLessThanOrEqual(to ?? Number.POSITIVE_INFINITY);
      if (above !== undefined) expect(least, path).toBeGreaterThan(above);
      if (below !== undefined) expect(most, path).toBeLessThan(below);
    }
  });

  it('holds every number of the examples within its usual span', () => {
    for (const [, repairCase] of fullCases()) {
      for (const [path, field] of all) {
        if (!isAmount(field) || field.usual === undefined) continue;
        for (const value of valuesAt(repairCase, path)) {
          if (typeof value !== 'number') continue;
          expect(value, path).toBeGreaterThanOrEqual(field.usual[0]);
          expect(value, path).toBeLessThanOrEqual(field.usual[1]);
        }
      }
    }
  });

  it.each<[slip: string, path: string, value: number]>([
    ['joules for kilojoules in an activation energy', 'laminate.cure.activationEnergy', 55],
    ['kilograms for grams in a fabric', 'resin.fabricWeight', 800],
    ['a per cent left out of a strain', 'laminate.strainToFailure', 0.1953],
    ['psi for ksi in a strength', 'pipe.material.yieldStrength', 38.5 * 6894.76],
    ['K for degC', 'site.pipeTemperature', 23],
    ['metres for millimetres', 'pipe.wallThickness', 8.18],
    ['MPa for GPa', 'laminate.hoopModulus', 24e6],
  ])('would show %s', (_, path, value) => {
    const usual = all.flatMap(([each, field]) => (each === path && isAmount(field) ? [field.usual] : []));
    expect(usual).toHaveLength(1);
    const [least, most] = usual[0] ?? [0, 0];
    expect(value < least || value > most).toBe(true);
  });

  it('gives a sheet at least twice its side lap', () => {
    expect(practice.leastSheetWidth.value).toBe(2 * practice.sideLap.value);
  });
});

describe('the words beside the table', () => {
  it('stand for every field, and for none that is not there', () => {
    const named = all.map(([path]) => path).filter((path) => !path.startsWith('lookedUp'));
    for (const path of named) {
      const [label, says] = wordsAt(path);
      expect(label.length, path).toBeGreaterThan(2);
      expect(says.length, path).toBeGreaterThan(2);
    }
    const known = new Set(named.flatMap((path) => [path, path.replace(/^.*?\.(?=cure)/u, '')]));
    for (const [path, { by }] of variants()) known.add(`${path.replace(/^.*?\.(?=cure)/u, '')}.${by}`);
    const strangers = [pipeWords, materialWords, workWords].flatMap((words) => Object.keys(words));
    expect(strangers.filter((path) => !known.has(path))).toEqual([]);
  });

  it('give an example for every value', () => {
    const leaves = all.filter(([, { kind }]) => !['block', 'variants', 'list'].includes(kind));
    const without = leaves.filter(([path]) => !path.startsWith('lookedUp') && wordsAt(path)[2] === undefined);
    expect(without).toEqual([]);
  });
});

function isAmount(field: Field): field is AmountField {
  return !['block', 'variants', 'list', 'either', 'choice', 'flag', 'text', 'name', 'clock'].includes(field.kind);
}

function variants(): [string, { readonly by: string }][] {
  return all.flatMap(([path, field]) => (field.kind === 'variants' ? [[path, field]] : []));
}

/** What stands at a path of the table, row by row where it goes through a list. */
function valuesAt(value: Loose, path: string): unknown[] {
  const [key = '', ...rest] = path.split('.');
  const held = value?.[key.replace('[]', '')];
  const values = key.endsWith('[]') ? (Array.isArray(held) ? held : []) : [held];
  return rest.length === 0 ? values : values.flatMap((each: unknown) => valuesAt(each, rest.join('.')));
}
