import type { caseTable } from './table.js';
import { materialWords } from './words-materials.js';
import { pipeWords } from './words-pipe.js';
import { workWords } from './words-work.js';

/** What a field says to people: its label on the sheet, what it is, and an example that the JSON door takes in its place. */
export type Words = readonly [label: string, says: string, example?: unknown];

/** The words of every field of the table, by its path; those of a cure stand once, whatever it is that cures. */
const words: Readonly<Record<WordPath, Words>> = {
  title: ['Title', 'What is repaired, in a few words', 'Cooling-water header, pinhole leak'],
  reference: ['Reference', 'Line number, drawing, work order: whatever the site calls it', 'CW-1104'],
  date: ['Survey', 'Day of the survey, as 2026-03-14', '2026-03-14'],
  note: ['Note', 'Anything a reader should know about this case', 'Survey with the line drained'],
  basis: ['Rules', 'Rule set', 'ISO 24817'],
  fitting: ['Fitting', 'Fitting that the repair lies on; none for straight pipe', 'none'],
  'fitting.kind': ['Fitting', 'Kind of the fitting', 'bend'],
  'fitting.bendRadius': ['Radius of the bend', 'Radius of the centre line of a bend', '305 mm'],
  confirmed: ['Confirmed', 'Numbers of the rule set as somebody who has the document reads them there'],
  'confirmed[].path': ['Number', 'Path of the number in the rule set', 'overlap.minimum'],
  'confirmed[].value': ['Value', 'The number as it stands there', '50 mm'],
  'confirmed[].by': ['Confirmed by', 'Who read it in the document', 'A. Reader, integrity engineer'],
  'confirmed[].edition': ['Edition', 'The edition in which it was read', '2017, second printing'],
  'confirmed[].note': ['Note', 'What else there is to know of it', 'clause as cited by the library'],
  ...pipeWords,
  ...materialWords,
  ...workWords,
};

/** The words at a path of a case: `defect.profile[3].depth`. */
export function wordsAt(path: string): Words {
  const inAnyRow = path.replaceAll(/\[\d+\]/gu, '[]');
  const found = words[inAnyRow as WordPath] ?? words[inAnyRow.replace(/^.*?\.(?=cure(?:\.|$))/u, '') as WordPath];
  if (found === undefined) throw new Error(`the field ${path} has no words: a fault of this library`);
  return found;
}

/** Paths of a table as `words` is keyed by them. */
type WordPath = Exclude<Shortened<PathsIn<typeof caseTable>>, `lookedUp${string}`>;

type Shortened<P extends string> = P extends `${string}.cure` | `${string}.cure.${string}` ? CureOf<P> : P;
type CureOf<P extends string> = P extends `${string}.cure.${infer Rest}` ? `cure.${Rest}` : 'cure';

/** The path of every field of a table, holders included. */
export type PathsIn<T> = { [K in keyof T & string]: K | `${K}${Below<T[K]>}` }[keyof T & string];

type Below<F> = F extends { readonly fields: infer Inner }
  ? `.${PathsIn<Inner>}`
  : F extends { readonly by: infer By extends string; readonly variants: infer V }
    ? `.${By | { [Word in keyof V]: PathsIn<V[Word]> }[keyof V]}`
    : F extends { readonly row: infer Row }
      ? Row extends { readonly fields: unknown }
        ? `[]${Below<Row>}`
        : '[]'
      : F extends { readonly shapes: readonly (infer Shape)[] }
        ? Below<Shape>
        : never;
