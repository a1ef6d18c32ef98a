import { posix } from 'node:path';
import { escapedHtml } from '../../src/report/html-text.js';

/** What every page of the site has round its text: head, list of pages, search, the word of caution. */

export interface FramedPage {
  /** Where it stands in the site: `formulas/pipe/hoop-stress.html`. */
  readonly place: string;
  readonly title: string;
  /** HTML of the page itself. */
  readonly body: string;
  /** What the page is about, in a sentence, for those who list pages. */
  readonly says?: string;
  /** Scripts of the site that it needs, by their places. */
  readonly scripts?: readonly string[];
}

/** The list of pages: groups with links by place. */
export interface ListedGroup {
  readonly name: string;
  readonly links: readonly { readonly place: string; readonly label: string }[];
}

/** The address of one place of the site as another writes it. */
export function fromPlace(place: string, target: string): string {
  const [path = '', anchor] = target.split('#');
  const relative = path === '' ? '' : posix.relative(posix.dirname(place), path);
  return anchor === undefined ? relative : `${relative}#${anchor}`;
}

const CAUTION =
  'A design is to be checked by a competent person under the local code. It replaces neither the standard, nor the qualification of the repair system, nor licensed practice.';

/** A pipe in its wrap: the mark of the site. */
const MARK =
  '<svg class="mark" viewBox="0 0 44 20" width="44" height="20" aria-hidden="true"><path d="M0 4h44M0 16h44" stroke="currentColor" stroke-width="2"/><path d="M10 1.5h24v17H10z" fill="currentColor" opacity=".18"/><path d="M12 18.5l5-17M18 18.5l5-17M24 18.5l5-17M30 18.5l4-13" stroke="currentColor" stroke-width="1.6" fill="none"/></svg>';

export function framed({ place, title, body, says, scripts = [] }: FramedPage, groups: readonly ListedGroup[]): string {
  const to = (target: string): string => escapedHtml(fromPlace(place, target));
  const home = place === 'index.html';
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; img-src 'self' data:; style-src 'self' 'unsafe-inline'; script-src 'self'; form-action 'self'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${home ? 'hoopwright: documentation' : `${escapedHtml(title)} | hoopwright`}</title>
${says === undefined ? '' : `<meta name="description" content="${escapedHtml(says)}">\n`}<link rel="stylesheet" href="${to('site.css')}">
</head>
<body>
<a class="skip" href="#content">Skip to the text</a>
<header>
<a class="home" href="${to('index.html')}"${home ? ' aria-current="page"' : ''}>${MARK}hoopwright</a>
<form role="search" action="${to('search.html')}" method="get"><label for="q">Search</label><input id="q" name="q" type="search" placeholder="barlow, dew point, pot life" autocomplete="off"></form>
</header>
<div class="columns">
<nav aria-label="Pages">
<details class="menu" open><summary>All pages</summary>
${groups.map((group) => listed(group, place, to)).join('\n')}
</details>
</nav>
<main id="content" tabindex="-1">
${body}
</main>
</div>
<footer><p>${CAUTION}</p></footer>
${scripts.map((script) => `<script src="${to(script)}"></script>\n`).join('')}<script src="${to('site.js')}"></script>
</body>
</html>
`;
}

function listed({ name, links }: ListedGroup, place: string, to: (target: string) => string): string {
  const items = links.map(({ place: target, label }) => {
    const here = target === place ? ' aria-current="page"' : '';
    return `<li><a href="${to(target)}"${here}>${escapedHtml(label)}</a></li>`;
  });
  return `<h2 class="group">${escapedHtml(name)}</h2>\n<ul>${items.join('')}</ul>`;
}
