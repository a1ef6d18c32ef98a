import { type Source, type SourceReference, sources } from '../formula/index.js';

/** A body that issues standards is named by its letters; a person by the surname. */
function nameOf(author: string): string {
  if (!author.includes(',')) return author;
  const surnames = author
    .replace(/\(.*?\)/gu, '')
    .split(';')
    .map((person) => person.split(',')[0]?.trim() ?? '');
  return surnames.length > 2 ? `${surnames[0]} et al.` : surnames.join(' and ');
}

/** The designation of a standard, or the title of a book, without what follows it. */
function shortTitle(title: string): string {
  return title.split(/[,:]/u)[0] ?? title;
}

const names = new Map<Source, string>();

/** A source as a step names it; every step of a sheet does. */
function named(source: Source): string {
  const known = names.get(source);
  if (known !== undefined) return known;
  const name = nameFrom(source);
  names.set(source, name);
  return name;
}

function nameFrom({ author, title }: Source): string {
  const short = shortTitle(title);
  // 49 CFR needs no author, and ISO 24817 carries its own.
  const carries = /^\d+ CFR/u.test(short) || short.startsWith(author);
  if (carries) return short;
  return /^[A-Z]+$/u.test(author) ? `${author} ${short}` : `${nameOf(author)}, ${short}`;
}

/** A source in one line of a step. What was written down from memory says so at every mention. */
export function cite({ key, locator }: SourceReference): string {
  const source: Source = sources[key];
  const recalled = source.reached === 'recalled' && !locator.includes('recalled') ? ', as recalled' : '';
  return `${named(source)} (${source.year}), ${locator}${recalled}`;
}

/** A source in full, for the list at the end: author, title, edition, year, DOI, how it was reached. */
export function bibliographyEntry(key: SourceReference['key']): string {
  const { author, title, edition, year, doi, reached, note }: Source = sources[key];
  const reach = {
    published: 'read in its own open text',
    secondary: 'read in a secondary copy',
    recalled: 'written down from memory, not seen',
  }[reached];
  const parts = [
    `${author}: ${title}`,
    edition === undefined ? undefined : `${edition} edition`,
    String(year),
    doi === undefined ? undefined : `doi ${doi}`,
  ];
  return `${parts.filter((part) => part !== undefined).join(', ')}. ${capital(reach)}.${note === undefined ? '' : ` ${note}`}`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
