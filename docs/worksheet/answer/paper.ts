import { element } from '../dom.js';

/**
 * A page that the library wrote, as a sheet of paper inside this one: its own style reaches nothing outside, and this page's
 * style nothing inside. Its scripts do not run.
 */
export function layOnPaper(host: HTMLElement, html: string, topLevel: number): ShadowRoot {
  const page = new DOMParser().parseFromString(html, 'text/html');
  const root = host.shadowRoot ?? host.attachShadow({ mode: 'open' });
  const style = [...page.querySelectorAll('style')].map(({ textContent }) => textContent).join('\n');
  const body = element('div', { class: 'paper-body' });
  const main = page.querySelector('main') ?? page.body;
  body.append(...main.childNodes);
  placeHeadings([...body.querySelectorAll('h1, h2, h3, h4, h5, h6')], topLevel);
  nameSymbols(body);
  // A row without a word of its own goes on with that above it: its head names nothing.
  for (const head of body.querySelectorAll('th'))
    if (head.textContent.trim() === '') head.setAttribute('role', 'presentation');
  body.addEventListener('contentvisibilityautostatechange', scrollByKeys);
  root.replaceChildren(element('style', {}, onPaper(style)), body);
  return root;
}

/** An equation wider than the paper scrolls, by keys too. Its width is known once it has come into sight and is set. */
function scrollByKeys({ target }: Event): void {
  if (target instanceof HTMLElement && target.scrollWidth > target.clientWidth) target.tabIndex = 0;
}

/** Headings keep their look and take their place under those of this page: the highest of them is of the level given. */
function placeHeadings(headings: readonly Element[], topLevel: number): void {
  const levelOf = (heading: Element): number => Number(heading.tagName.slice(1));
  const highest = Math.min(...headings.map(levelOf));
  for (const heading of headings)
    heading.setAttribute('aria-level', String(Math.min(6, levelOf(heading) - highest + topLevel)));
}

/** The head of a row that is a symbol alone is read out by it in letters: mathematics alone counts as no text everywhere. */
function nameSymbols(body: Element): void {
  for (const head of body.querySelectorAll('th:has(math)')) {
    const math = head.querySelector('math');
    const symbol = head.textContent.trim();
    if (math === null || symbol === '' || math.textContent.trim() !== symbol) continue;
    math.setAttribute('aria-hidden', 'true');
    head.append(element('span', { class: 'symbol-name' }, symbol));
  }
}

/** A sheet has hundreds of equations: those out of sight are set when they come into it. */
const UNSEEN_LATER = '@media screen{.equation{content-visibility:auto;contain-intrinsic-size:auto 7rem}}';

/** The style of a page for one that stands in another: what it says of the whole page it says of the paper. */
function onPaper(style: string): string {
  return `:host{display:block;color-scheme:light;overflow-wrap:anywhere}.symbol-name{position:absolute;clip-path:inset(50%);width:1px;height:1px;overflow:hidden}${UNSEEN_LATER}${style
    .replaceAll(/@page\s*\{[^{}]*(?:\{[^{}]*\}[^{}]*)*\}/gu, '')
    .replaceAll(/(?<![\w.#-])(?:body|:root)\{/gu, ':host{')
    .replaceAll(/(?<![\w.#-])main\{/gu, '.paper-body{')}`;
}
