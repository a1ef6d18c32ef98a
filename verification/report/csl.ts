import { type ListedSource, listedSources } from './bibliography.js';
import { type SourceType, sourceTypes } from './source-types.js';

/** The sources as CSL-JSON, which reference managers read, made from src/formula/sources.ts. */

type Name = { readonly family: string; readonly given: string } | { readonly literal: string };

export interface CslSource {
  readonly id: string;
  readonly type: SourceType;
  readonly author?: readonly Name[];
  readonly editor?: readonly Name[];
  readonly title: string;
  readonly edition?: string;
  readonly issued: { readonly 'date-parts': readonly [readonly [number]] };
  readonly DOI?: string;
  readonly note?: string;
  readonly custom: { readonly reached: string };
}

/** A surname, and initials or one given name: 'Kiefner, J. F.'. Anything else is a body: 'ASME'. */
const PERSON = /^(?<family>[^,]+), (?<given>(?:\p{Lu}\p{L}*\.[ -]?)+|\p{Lu}\p{Ll}+)$/u;

function namesOf(author: string): Name[] {
  return author.split('; ').flatMap((one): Name[] => {
    const named = one.replace(/ et al\.$/u, '');
    const { family, given } = PERSON.exec(named)?.groups ?? {};
    const name: Name = family === undefined || given === undefined ? { literal: named } : { family, given };
    return named === one ? [name] : [name, { literal: 'et al.' }];
  });
}

function recordOf({ key, author, title, edition, year, doi, note, reached }: ListedSource): CslSource {
  const edited = author.endsWith(' (ed.)');
  const names = namesOf(author.replace(/ \(ed\.\)$/u, ''));
  return {
    id: key,
    type: sourceTypes[key as keyof typeof sourceTypes] ?? 'software',
    ...(edited ? { editor: names } : { author: names }),
    title,
    ...(edition === undefined ? {} : { edition }),
    issued: { 'date-parts': [[year]] },
    ...(doi === undefined ? {} : { DOI: doi }),
    ...(note === undefined ? {} : { note }),
    custom: { reached },
  };
}

export function cslSources(): CslSource[] {
  return listedSources.map(recordOf);
}
