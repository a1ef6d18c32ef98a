import { type AnyFormula, type Source, sources } from '../../src/formula/index.js';
import type { CaseResult } from '../runner/judge.js';
import { programs } from './programs.js';
import type { BibliographyEntry } from './shape.js';

/** The sources of the library and the programs that are run against it, as a reader finds them. */

const REACHED: Readonly<Record<Source['reached'], string>> = {
  published: 'seen in its own open text',
  secondary: 'seen in a secondary copy',
  recalled: 'recalled, not seen',
};

/** A source of either list, with how it was reached in words. */
export interface ListedSource extends Omit<Source, 'reached'> {
  readonly key: string;
  readonly reached: string;
}

export const listedSources: readonly ListedSource[] = [
  ...Object.entries<Source>(sources).map(([key, source]) => ({ key, ...source, reached: REACHED[source.reached] })),
  ...Object.entries(programs).map(([key, program]) => ({ key, ...program, reached: 'run' })),
];

function entryText({ author, title, edition, year, doi, note }: ListedSource): string {
  const parts = [`${author}: ${title}`, edition === undefined ? '' : `${edition} edition`, String(year)];
  const link = doi === undefined ? '' : ` https://doi.org/${doi}`;
  return `${parts.filter((part) => part !== '').join(', ')}.${link}${note === undefined ? '' : ` ${note}`}`;
}

/** Every source with how often cases and formulas name it. */
export function bibliography(formulas: readonly AnyFormula[], results: readonly CaseResult[]): BibliographyEntry[] {
  return listedSources.map((source) => ({
    key: source.key,
    text: entryText(source),
    reached: source.reached,
    cases: results.filter(({ record }) => record.source?.key === source.key).length,
    formulas: formulas.filter((formula) => formula.sources.some(({ key }) => key === source.key)).length,
  }));
}
