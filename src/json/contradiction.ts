import { type Kind, type Length, type Quantity, writeQuantity } from '../quantity/index.js';
import type { RepairCase } from '../repair/case/case.js';

/** A place in a document. */
export type Path = readonly (string | number)[];

/** Two fields of a document that cannot both be right. */
export interface Contradiction {
  readonly path: Path;
  /** How the sentence "it must ..." ends; `{limit}` stands for the limit. */
  readonly must: string;
  /** The field that sets the limit, and its value as text, for where it was not typed but came from a table. */
  readonly limit?: { readonly at: Path; readonly text: string };
  /** A text that would pass; the limit itself where this is left out. */
  readonly example?: unknown;
}

/** The outside diameter, measured straight or round the pipe. */
export function outsideDiameter({ outsideDiameter: D, circumference }: RepairCase['pipe']): number {
  return D ?? (circumference ?? 0) / Math.PI;
}

/** A length for a sentence: in full where that is short, else to six digits, which the slack of the checks covers. */
export function inMillimetres(value: number): string {
  const exact = writeQuantity('length', value as Length, 'mm');
  return exact.length <= 12 ? exact : `${Number((value * 1000).toPrecision(6))} mm`;
}

export function inMegapascals(kind: 'stress' | 'gauge pressure', value: number): string {
  return writeQuantity(kind, value as Quantity<Kind>, 'MPa');
}
