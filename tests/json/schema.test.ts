import { Ajv2020 } from 'ajv/dist/2020.js';
import * as fc from 'fast-check';
import { describe, expect, expectTypeOf, test } from 'vitest';
import { readDocument } from '../../src/json/document-door.js';
import type { CaseDocument } from '../../src/json/document-table.js';
import { caseFields, caseJsonSchema, decodeCase, isCaseError } from '../../src/json/index.js';
import { units } from '../../src/quantity/index.js';
import type { RepairCase } from '../../src/repair/index.js';
import { exampleDocument, exampleNames } from './examples.js';
import { changed, fullDocument, fullShapes, placesIn } from './full-document.js';

// biome-ignore lint/suspicious/noExplicitAny: a JSON Schema is read here as the plain JSON that it is.
const schema = caseJsonSchema() as any;

/** The schema in a validator that knows nothing of this library, and refuses a schema that says what it does not mean. */
const accepts = new Ajv2020({ strict: true, allErrors: false }).compile(JSON.parse(JSON.stringify(schema)));

describe('the JSON Schema of a case', () => {
  test('describes the text that people write, not the numbers it becomes', () => {
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(schema.additionalProperties).toBe(false);
    expect(schema.required).toContain('loads');
    expect(schema.required).not.toContain('assessment');
    const wall = schema.properties.pipe.properties.wallThickness;
    expect(wall.type).toBe('string');
    expect(wall.description).toMatch(/^Nominal wall.*in m, mm, cm/);
    expect(wall.examples).toEqual(['8.18 mm']);
  });

  test.each(exampleNames)('takes %s', (name) => {
    expect(accepts(exampleDocument(name))).toBe(true);
  });

  test('refuses what the decoder refuses: a missing load, an unknown key, a bare number, a word that is none', () => {
    const broken = [
      (d: { loads: object }) => Reflect.deleteProperty(d.loads, 'soil'),
      (d: { colour: string }) => Object.assign(d, { colour: 'green' }),
      (d: { repair: object }) => Object.assign(d.repair, { life: 10 }),
      (d: { repair: object }) => Object.assign(d.repair, { class: 4 }),
      (d: { wrap: object }) => Object.assign(d.wrap, { form: 'string' }),
    ];
    for (const change of broken) {
      const document = exampleDocument();
      change(document);
      expect(() => decodeCase(document)).toThrow();
      expect(accepts(document)).toBe(false);
    }
  });

  test('gives every leaf a description', () => {
    const bare: string[] = [];
    const walk = (part: Record<string, unknown>, path: string): void => {
      const inner = [part['properties'], part['items']].filter((each) => each !== undefined);
      const options = [part['anyOf'], part['oneOf']].flatMap((each) => (each as Record<string, unknown>[]) ?? []);
      for (const option of options) walk(option, path);
      if (part['properties'] !== undefined) {
        for (const [key, field] of Object.entries(part['properties'] as Record<string, Record<string, unknown>>)) {
          walk(field, `${path}.${key}`);
        }
      }
      if (part['items'] !== undefined) walk(part['items'] as Record<string, unknown>, `${path}[]`);
      const says = part['description'] !== undefined || part['const'] !== undefined;
      if (inner.length === 0 && options.length === 0 && !says) bare.push(path);
    };
    walk(schema, '');
    expect(bare).toEqual([]);
  });
});

/** One slip within one field: of sign, unit, kind, form or word. */
const SLIPS: readonly unknown[] = [
  ...[
    undefined,
    null,
    '',
    ' ',
    [],
    {},
    true,
    0,
    -1,
    0.5,
    1e21,
    'none',
    'a wrong word',
    'NaN mm',
    'Infinity mm',
    '1e mm',
  ],
  ...[
    '100',
    '100 psi',
    '-3 year',
    '6 bara',
    '6 barg',
    '150 %',
    '100 %',
    '101 %',
    '100 MM',
    '8.18mmm',
    '8,18 mm',
    '1/0 in',
    '1 1/2',
  ],
  ...[
    '-1 mm',
    '0 mm',
    '0.00 mm',
    '-0.1 bar',
    '0 K',
    '-273.16 degC',
    '-459.68 degF',
    '-5 degC',
    '20 C',
    '20 c',
    '1 Psi',
    '3 m/s',
  ],
  ...[
    '1/2 in',
    '.5 m',
    '5. m',
    '1e3 m',
    '+5 mm',
    '0/5 in',
    '0x10 mm',
    '5 mm\n6',
    '5\u00a0mm',
    '5 mm ',
    '1.0',
    '1.01',
    '0.999',
    '0.2 strain',
  ],
  ...['25:00', '7:30', '07:30', 'a\nb', 'a\u202eb'],
];

describe('every slip within one field', () => {
  const documents = fullShapes.map((shapes) => fullDocument(shapes));

  test.each(documents)('that the door refuses in document %# fails in the schema, and no other', (document) => {
    const disagreed = placesIn(document).flatMap((path, place) =>
      // A third of them at each place, in turn: every slip meets every sort of field.
      SLIPS.filter((_, at) => (at + place) % 3 === 0).flatMap((slip) => {
        const other = changed(document, path, slip);
        return accepts(other) === isRead(other) ? [] : [`${path.join('.')} = ${JSON.stringify(slip)}`];
      }),
    );
    expect(disagreed).toEqual([]);
  });

  test('fails in the schema when number and unit are drawn', () => {
    const symbols = [...new Set(Object.values(units).flatMap((table) => Object.keys(table)))];
    const numbers = fc.oneof(
      fc.double({ min: -1000, max: 1000, noNaN: true }).map((value) => value.toFixed(3)),
      fc.integer({ min: -5, max: 300 }).map(String),
      fc.constantFrom('0', '1', '1.0', '100', '99.9', '0.2', '.199', '20', '19.99', '273.15', '-273.15', '-459.67'),
    );
    const document = documents[0];
    const places = placesIn(document).filter((path) => typeof heldAt(document, path) === 'string');
    fc.assert(
      fc.property(fc.constantFrom(...places), numbers, fc.constantFrom(...symbols), (path, number, symbol) => {
        const other = changed(document, path, `${number} ${symbol}`);
        expect(accepts(other), `${path.join('.')} = ${number} ${symbol}`).toBe(isRead(other));
      }),
      { seed: 20261125, numRuns: 3000 },
    );
  });

  function heldAt(value: unknown, path: readonly (string | number)[]): unknown {
    return path.reduce<unknown>((held, key) => (held as Record<string | number, unknown>)[key], value);
  }

  function isRead(document: unknown): boolean {
    try {
      readDocument(document);
      return true;
    } catch (error) {
      if (isCaseError(error)) return false;
      throw error;
    }
  }
});

/** The path of every field of a type. */
type Paths<T> = T extends number | string | boolean | undefined
  ? never
  : T extends readonly (infer Row)[]
    ? Paths<Row>
    : { [K in keyof T & string]-?: K | `${K}.${Paths<NonNullable<T[K]>>}` }[keyof T & string];

describe('the schema', () => {
  test('holds every field of the typed case, but for what a reader fills in', () => {
    type Unsaid = Exclude<Paths<RepairCase>, Paths<CaseDocument>>;
    expectTypeOf<Exclude<Unsaid, `lookedUp${string}`>>().toBeNever();
  });
});

describe('the list of fields', () => {
  test('holds every field that the examples use', () => {
    const listed = new Set(caseFields().map(({ path }) => path));
    const used = (value: unknown, path: string): string[] => {
      if (Array.isArray(value)) return value.flatMap((row) => used(row, `${path}[]`));
      if (typeof value !== 'object' || value === null) return path.endsWith('[]') ? [] : [path];
      return Object.entries(value).flatMap(([key, held]) => used(held, path === '' ? key : `${path}.${key}`));
    };
    for (const name of exampleNames) {
      expect(used(exampleDocument(name), '').filter((path) => !listed.has(path))).toEqual([]);
    }
  });
});
