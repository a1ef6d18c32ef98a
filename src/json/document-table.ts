import { caseTable } from '../repair/case/table.js';
import type { Field, Fields, HeldBy } from '../repair/case/table-field.js';
import { type Words, wordsAt } from '../repair/case/words.js';

/*
 * A case as a document: the table of the case, but that a document may name a row of a table in three places instead of
 * the numbers in it: the size of the pipe, its grade, and its allowable stress; and that a confirmed number has its unit.
 */

const { lookedUp: _, ...rest } = caseTable;
const measured = rest.pipe.fields;
const { name, yieldStrength, tensileStrength, allowableStress, ...elastic } = measured.material.fields;

const bySchedule = {
  schedule: { kind: 'name' },
  standard: { kind: 'choice', optional: true, words: ['ASME B36.10M', 'ASME B36.19M'] },
  measures: { kind: 'choice', optional: true, words: ['mm', 'inch'] },
} as const satisfies Fields;

const size = {
  kind: 'either',
  optional: true,
  shapes: [
    { kind: 'text' },
    { kind: 'block', when: 'dn', fields: { dn: { kind: 'count', from: 6 }, ...bySchedule } },
    { kind: 'block', fields: { nps: { kind: 'name' }, ...bySchedule } },
  ],
} as const satisfies Field;

const allowable = {
  kind: 'either',
  optional: true,
  shapes: [
    { kind: 'stress', above: allowableStress.above },
    {
      kind: 'block',
      fields: { row: { kind: 'text' }, at: { kind: 'temperature', optional: true, above: 0 } },
    },
  ],
} as const satisfies Field;

const byStrength = { yieldStrength, tensileStrength, name, allowableStress: allowable, ...elastic } as const;

const byGrade = {
  grade: { kind: 'text' },
  edition: { kind: 'choice', words: ['43rd and earlier', '44th and later'] },
  name: { kind: 'text', optional: true },
  allowableStress: allowable,
  ...elastic,
} as const satisfies Fields;

/** A number of the rule set stands in a document as every other does: with its unit, where it has one. */
const confirmed = {
  ...rest.confirmed,
  row: { ...rest.confirmed.row, fields: { ...rest.confirmed.row.fields, value: { kind: 'name' } } },
} as const satisfies Field;

/** What a document may hold. */
export const documentTable = {
  ...rest,
  confirmed,
  pipe: {
    kind: 'block',
    fields: {
      ...measured,
      size,
      wallThickness: { ...measured.wallThickness, optional: true },
      material: {
        kind: 'either',
        shapes: [
          { kind: 'block', when: 'grade', fields: byGrade },
          { kind: 'block', fields: byStrength },
        ],
      },
    },
  },
} as const satisfies Fields;

/** A case as its document holds it, quantities decoded, rows of tables still by name. */
export type CaseDocument = HeldBy<typeof documentTable>;

/** A case as text, as it stands in a JSON file. */
export type CaseText = TextOf<CaseDocument>;

type TextOf<T> = T extends { readonly '~kind': string }
  ? string
  : T extends readonly (infer Row)[]
    ? TextOf<Row>[]
    : T extends object
      ? { -readonly [K in keyof T]: TextOf<T[K]> }
      : T;

const rowWords: Readonly<Record<string, Words>> = {
  'pipe.size.nps': ['Size', 'Nominal pipe size in inches', '8'],
  'pipe.size.dn': ['Size', 'Nominal diameter in millimetres', 200],
  'pipe.size.schedule': ['Schedule', 'Schedule: 40, 80S, STD, XS, XXS', '40'],
  'pipe.size.standard': [
    'Standard',
    'Standard of the pipe; follows from the schedule where it is left out',
    'ASME B36.10M',
  ],
  'pipe.size.measures': [
    'Measures',
    'Which printed measures to take; they differ by rounding; mm where it is left out',
    'mm',
  ],
  'pipe.material.grade': ['Grade', 'Line-pipe grade; its strengths are taken from the table', 'API 5L B'],
  'pipe.material.edition': [
    'Edition',
    'Edition of the specification that the pipe was made to; the two differ by up to 2 %',
    '44th and later',
  ],
  'pipe.material.allowableStress.row': ['Row', 'Row of the table of allowable stresses', 'API 5L B'],
  'pipe.material.allowableStress.at': [
    'At',
    'Temperature at which the row is read, not below the design temperature; that one where it is left out',
    '40 degC',
  ],
};

/** What a field of a document says to people. */
export function documentWordsAt(path: string): Words {
  return rowWords[path] ?? wordsAt(path);
}
