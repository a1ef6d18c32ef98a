import type { AnyFormula } from '../../../src/formula/index.js';
import { caseFields } from '../../../src/json/index.js';
import { formulas } from '../../../src/registry/index.js';
import { cite } from '../../../src/report/citation.js';
import { formulaPlace } from '../formulas.js';
import type { Section } from '../markdown.js';
import type { Entry } from './rank.js';

/** The entries of the search: formulas, pages by their sections, fields of a case, symbols of the interface. */

/** A page that was written, as the search sees it. */
export interface SearchedPage {
  readonly place: string;
  readonly label: string;
  readonly sections: readonly Section[];
}

/** So much of a section is searched; tables go on for pages. */
const MOST = 700;

export function searchEntries(pages: readonly SearchedPage[], symbols: readonly Entry[]): Entry[] {
  return [...formulas.map(formulaAsEntry), ...pages.flatMap(pageEntries), ...fieldEntries(), ...symbols];
}

function formulaAsEntry({ id, title, search = [], inputs, sources, compute }: AnyFormula): Entry {
  const names = Object.values(inputs as Readonly<Record<string, { name: string }>>).map(({ name }) => name);
  return {
    title,
    place: formulaPlace(id),
    sort: 'formula',
    terms: [...search, id, compute.name],
    text: `From ${names.join(', ')}. ${sources.map(cite).join('; ')}`,
  };
}

function pageEntries({ place, label, sections }: SearchedPage): Entry[] {
  return sections.map(({ id, heading, level, text }) => ({
    title: level === 1 ? label : `${heading} (${label})`,
    place: level === 1 ? place : `${place}#${id}`,
    sort: level === 1 ? 'page' : 'section',
    terms: level === 1 ? [heading] : [],
    text: text.replaceAll(/\s+/gu, ' ').trim().slice(0, MOST),
  }));
}

function fieldEntries(): Entry[] {
  return caseFields().map(({ path, says }) => ({
    title: path,
    place: 'case.html',
    sort: 'field',
    terms: [path.replaceAll(/[.[\]]+/gu, ' ')],
    text: says,
  }));
}
