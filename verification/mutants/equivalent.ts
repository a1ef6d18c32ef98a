import type { Mutant } from './instrument.js';

/** Changes that no admissible case can tell from the original, each with its reason. */

export interface Equivalent {
  readonly file: string;
  readonly original: string;
  readonly replacement: string;
  readonly because: string;
}

export const equivalents: readonly Equivalent[] = [];

const spaced = (text: string): string => text.replaceAll(/\s+/gu, ' ').trim();

export const isTheSame = (row: Equivalent, mutant: Mutant): boolean =>
  row.file === mutant.file &&
  spaced(row.original) === spaced(mutant.original) &&
  spaced(row.replacement) === spaced(mutant.replacement);

export const reasonOf = (mutant: Mutant): string | undefined =>
  equivalents.find((row) => isTheSame(row, mutant))?.because;
