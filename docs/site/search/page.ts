/** What runs in the pages of the site: the list of pages folds up on a phone, and the page of the search answers as one types. */
import { type Entry, search } from './rank.js';

/** An element, as far as these pages touch it. */
interface PageElement {
  textContent: string | null;
  value?: string;
  href?: string;
  className: string;
  open?: boolean;
  append(...children: readonly PageElement[]): void;
  replaceChildren(...children: readonly PageElement[]): void;
  addEventListener(event: string, call: () => void): void;
}

/** The document of a page of the site, as far as it is touched. */
interface SiteDocument {
  getElementById(id: string): PageElement | null;
  querySelector(selector: string): PageElement | null;
  createElement(tag: string): PageElement;
}

/** What a page finds round itself. */
interface SiteWindow {
  readonly document: SiteDocument;
  readonly location: { readonly search: string };
  readonly innerWidth: number;
  /** The index, which a script of its own sets: a page that is read from disk may fetch nothing. */
  readonly searchIndex?: readonly Entry[];
}

const NARROW = 896;
const MOST = 40;

export function runSite(page: SiteWindow): void {
  const menu = page.document.querySelector('details.menu');
  if (menu !== null && page.innerWidth <= NARROW) menu.open = false;
  if (page.searchIndex !== undefined) runSearch(page, page.searchIndex);
}

function runSearch({ document, location }: SiteWindow, entries: readonly Entry[]): void {
  const field = document.getElementById('q');
  const list = document.getElementById('hits');
  const count = document.getElementById('count');
  if (field === null || list === null || count === null) return;
  const answer = (): void => {
    const query = field.value ?? '';
    const hits = search(entries, query);
    const more = hits.length > MOST ? `; the first ${MOST} are shown` : '';
    count.textContent = query.trim() === '' ? '' : `${hits.length === 0 ? 'Nothing' : hits.length} found${more}.`;
    list.replaceChildren(...hits.slice(0, MOST).map((hit) => item(document, hit)));
  };
  field.value = new URLSearchParams(location.search).get('q') ?? '';
  field.addEventListener('input', answer);
  answer();
}

function item(document: SiteDocument, { title, place, sort, text }: Entry): PageElement {
  const made = (tag: string, words: string, className = ''): PageElement => {
    const element = document.createElement(tag);
    element.textContent = words;
    element.className = className;
    return element;
  };
  const link = made('a', title);
  link.href = place;
  const says = text.length > 180 ? `${text.slice(0, 180).replace(/\s\S*$/u, '')} ...` : text;
  const row = document.createElement('li');
  row.append(link, made('span', ` ${sort}`, 'where'), made('p', says));
  return row;
}
