import { element } from '../dom.js';

/** Levels that a heading of a page goes down when the page stands inside this one. */
const DEEPER = 3;

/**
 * A page that the library wrote, as a sheet of paper inside this one: its own style reaches nothing outside, and this page's
 * style nothing inside. Its scripts do not run.
 */
export function layOnPaper(host: HTMLElement, html: string): ShadowRoot {
  const page = new DOMParser().parseFromString(html, 'text/html');
  const root = host.shadowRoot ?? host.attachShadow({ mode: 'open' });
  const style = [...page.querySelectorAll('style')].map(({ textContent }) => textContent).join('\n');
  const body = element('div', { class: 'paper-body' });
  const main = page.querySelector('main') ?? page.body;
  body.append(...main.childNodes);
  for (const heading of body.querySelectorAll('h1, h2, h3, h4'))
    heading.setAttribute('aria-level', String(Math.min(6, Number(heading.tagName.slice(1)) + DEEPER)));
  root.replaceChildren(element('style', {}, onPaper(style)), body);
  return root;
}

/** The style of a page for one that stands in another: what it says of the whole page it says of the paper. */
function onPaper(style: string): string {
  return `:host{display:block;color-scheme:light;overflow-wrap:anywhere}${style
    .replaceAll(/@page\s*\{[^{}]*(?:\{[^{}]*\}[^{}]*)*\}/gu, '')
    .replaceAll(/(?<![\w.#-])(?:body|:root)\{/gu, ':host{')
    .replaceAll(/(?<![\w.#-])main\{/gu, '.paper-body{')}`;
}
