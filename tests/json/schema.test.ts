import { describe, expect, expectTypeOf, test } from 'vitest';
import * as z from 'zod';
import { readDocument } from '../../src/json/document-door.js';
import type { CaseDocument } from '../../src/json/document-table.js';
import { caseFields, caseJsonSchema, caseSchema, decodeCase, isCaseError } from '../../src/json/index.js';
import type { RepairCase } from '../../src/repair/index.js';
import { exampleDocument, exampleNames } from './examples.js';
import { changed, fullDocument, fullShapes, placesIn } from './full-document.js';

// biome-ignore lint/suspicious/noExplicitAny: a JSON Schema is read here as the plain JSON that it is.
const schema = caseJsonSchema() as any;

/** The schema as a validator of its own, which knows nothing of the codecs behind it. */
const validator = z.fromJSONSchema(JSON.parse(JSON.stringify(schema)));

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
    expect(validator.safeParse(exampleDocument(name)).success).toBe(true);
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
      expect(validator.safeParse(document).success).toBe(false);
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

describe('the zod schema', () => {
  const documents = fullShapes.map((shapes) => fullDocument(shapes));

  test.each(documents)('takes and decodes document %# as the door does, and encodes it back', (document) => {
    const { read } = readDocument(document);
    expect(caseSchema.parse(document)).toEqual(read);
    expect(caseSchema.parse(z.encode(caseSchema, read))).toEqual(read);
  });

  test.each(documents)('refuses in document %# what the door refuses, and nothing else', (document) => {
    const probes = [undefined, null, '', [], {}, -1, 0.5, '-1 mm', '0 K', '101 %', 'NaN mm', 'none', 'a wrong word'];
    const disagreed = placesIn(document).flatMap((path) =>
      probes.flatMap((probe) => {
        const other = changed(document, path, probe);
        return caseSchema.safeParse(other).success === isRead(other) ? [] : [`${path.join('.')} = ${probe}`];
      }),
    );
    expect(disagreed).toEqual([]);
  });

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
