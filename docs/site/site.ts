import { readdirSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { formulaById } from '../../src/registry/index.js';
import { escapedHtml } from '../../src/report/html-text.js';
import { mathFonts } from '../../src/report/sheet-style.js';
import type { Symbols } from './api/write.js';
import { copied, groups, type Page, pages, placeOf } from './contents.js';
import { formulaPages, formulaPlace } from './formulas.js';
import { framed, fromPlace, type ListedGroup } from './frame.js';
import { frontPage } from './front.js';
import { writeMarkdown } from './markdown.js';
import { searchEntries } from './search/index.js';
import { siteScript } from './search/script.js';
import { unitsPage } from './units.js';

/** The whole site but the pages of typedoc, as texts by their places, and the folders that are copied beside them. */
export interface Site {
  readonly files: ReadonlyMap<string, string>;
  readonly folders: ReadonlyMap<string, string>;
}

/** Pages of the reference that no Markdown holds. */
const MADE = {
  Reference: [
    { place: 'formulas/index.html', label: 'Formulas' },
    { place: 'api/index.html', label: 'Types and functions' },
    { place: 'units.html', label: 'Units' },
    { place: 'examples/index.html', label: 'Example cases' },
  ],
} as const;

function listedGroups(): ListedGroup[] {
  return groups.map(({ name, pages: listed }) => {
    const own = Object.entries(listed).map(([source, label]) => ({ place: placeOf(source), label }));
    return { name, links: [...(name === 'Reference' ? MADE.Reference : []), ...own] };
  });
}

export function site(symbols: Symbols, { hasWorksheet = false } = {}): Site {
  const lists = listedGroups();
  const files = new Map<string, string>();
  const add = (place: string, title: string, body: string, scripts: readonly string[] = []): void => {
    files.set(place, framed({ place, title, body, scripts }, lists));
  };
  const written = pages.map((page) => ({ page, ...writePage(page) }));
  for (const { page, title, html } of written) add(placeOf(page.source), title, html);
  for (const { place, title, body } of formulaPages(symbols.placeOf)) add(place, title, body);
  add('examples/index.html', 'Example cases', examplesPage());
  add('units.html', 'Units', unitsPage());
  add('index.html', 'hoopwright', frontPage(lists, hasWorksheet));
  add('search.html', 'Search', SEARCH, ['search-index.js']);
  const entries = searchEntries(
    written.map(({ page, sections }) => ({ place: placeOf(page.source), label: page.label, sections })),
    symbols.entries,
  );
  files.set('search-index.js', `var searchIndex=${JSON.stringify(entries)};\n`);
  files.set('site.js', siteScript());
  files.set('site.css', `${readFileSync('docs/site/site.css', 'utf8')}${mathFonts}\n`);
  for (const [source, place] of Object.entries(copied)) files.set(place, readFileSync(source, 'utf8'));
  const folders = new Map([
    ['docs/examples', 'examples'],
    ['verification/report/figures', 'verification/figures'],
    ['docs/why/figures', 'why/figures'],
    ...(hasWorksheet ? ([['build/worksheet.html', 'worksheet.html']] as const) : []),
  ]);
  return { files, folders };
}

const SEARCH = `<h1>Search</h1>
<p id="count" role="status"></p>
<ol id="hits" class="hits"></ol>
<noscript><p>The search needs a script; the list of <a href="formulas/index.html">formulas</a> does not.</p></noscript>`;

function writePage({ source }: Page): ReturnType<typeof writeMarkdown> {
  const place = placeOf(source);
  return writeMarkdown(readFileSync(source, 'utf8'), {
    link: (href) => (/^(?:[a-z]+:|#)/u.test(href) ? href : fromPlace(place, targetOf(source, href))),
    named: (code) => (formulaById(code) === undefined ? undefined : fromPlace(place, formulaPlace(code))),
  });
}

/** The place of what a page of the repository links to. @throws Error where the site does not hold it */
function targetOf(source: string, href: string): string {
  const [path = '', anchor] = href.split('#');
  const target = posix.normalize(posix.join(posix.dirname(source), path)).replace(/\/$/u, '');
  const place = placeOfFile(target);
  if (place === undefined) throw new Error(`${source} links to ${href}, which the site does not hold`);
  return anchor === undefined ? place : `${place}#${anchor}`;
}

function placeOfFile(target: string): string | undefined {
  if (pages.some((page) => page.source === target)) return placeOf(target);
  if (target === 'docs/examples') return 'examples/index.html';
  if (/^docs\/(?:examples|why\/figures)\//u.test(target)) return target.replace('docs/', '');
  if (target.startsWith('verification/report/figures/')) return target.replace('report/', '');
  return copied[target];
}

function examplesPage(): string {
  const rows = readdirSync('docs/examples')
    .sort()
    .map((file) => {
      const says = file.endsWith('.json')
        ? String((JSON.parse(readFileSync(`docs/examples/${file}`, 'utf8')) as { title?: unknown }).title)
        : 'Metal losses of a survey, one a row';
      return `<li><a href="${file}"><code>${file}</code></a>: ${escapedHtml(says)}</li>`;
    });
  return `<h1>Example cases</h1>\n<p>Each is a whole case: start from the one that is nearest to yours. All of them are invented.</p>\n<ul>${rows.join('\n')}</ul>`;
}
