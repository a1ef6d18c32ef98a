import { readFileSync } from 'node:fs';
import type { AnyFormula } from '../../src/formula/index.js';
import type { CaseResult } from '../runner/judge.js';
import type { BibliographyEntry } from './shape.js';

/** A name in CSL-JSON. */
interface Name {
  readonly family?: string;
  readonly given?: string;
  readonly literal?: string;
}

/** A record of verification/sources.json: CSL-JSON, with how the source was reached under `custom`. */
export interface CslSource {
  readonly id: string;
  readonly type: string;
  readonly author?: readonly Name[];
  readonly editor?: readonly Name[];
  readonly title: string;
  readonly edition?: string;
  readonly issued: { readonly 'date-parts': readonly [readonly [number]] };
  readonly DOI?: string;
  readonly note?: string;
  readonly custom: { readonly reached: string };
}

export function readSources(): readonly CslSource[] {
  return JSON.parse(readFileSync(new URL('../sources.json', import.meta.url), 'utf8'));
}

export function cslYear({ issued }: CslSource): number {
  return issued['date-parts'][0][0];
}

function namesText(names: readonly Name[] | undefined): string {
  return (names ?? [])
    .map(({ family, given, literal }) => literal ?? [family, given].filter((part) => part !== undefined).join(', '))
    .join('; ')
    .replace('; et al.', ' et al.');
}

function entryText(source: CslSource): string {
  const { author, editor, title, edition, DOI, note } = source;
  const who = author === undefined ? `${namesText(editor)} (ed.)` : namesText(author);
  const parts = [`${who}: ${title}`, edition === undefined ? '' : `${edition} edition`, String(cslYear(source))];
  const doi = DOI === undefined ? '' : ` https://doi.org/${DOI}`;
  return `${parts.filter((part) => part !== '').join(', ')}.${doi}${note === undefined ? '' : ` ${note}`}`;
}

/** Every source with how often cases and formulas name it. */
export function bibliography(formulas: readonly AnyFormula[], results: readonly CaseResult[]): BibliographyEntry[] {
  return readSources().map((source) => ({
    key: source.id,
    text: entryText(source),
    reached: source.custom.reached,
    cases: results.filter(({ record }) => record.source?.key === source.id).length,
    formulas: formulas.filter((formula) => formula.sources.some(({ key }) => key === source.id)).length,
  }));
}
