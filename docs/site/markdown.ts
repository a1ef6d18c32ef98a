import { Marked, type Token, type Tokens } from 'marked';
import temml from 'temml';
import { escapedHtml } from '../../src/report/html-text.js';

/** One part of a page, from a heading to the next: what a search finds. */
export interface Section {
  readonly id: string;
  readonly heading: string;
  readonly level: number;
  readonly text: string;
}

export interface Written {
  readonly title: string;
  readonly html: string;
  readonly sections: readonly Section[];
}

/** What the frame of the site knows about targets: where a link of the repository leads, and which words are names. */
export interface Targets {
  /** The address in the site of a link as the page writes it. */
  link(href: string): string;
  /** The address of what a piece of code names, such as the id of a formula. */
  named(code: string): string | undefined;
}

/** The anchor of a heading, as the repository's own pages make it; a heading that comes again is numbered. */
function anchors(): (heading: string) => string {
  const taken = new Map<string, number>();
  return (heading) => {
    const slug = heading
      .toLowerCase()
      .replaceAll(/[^\p{L}\p{N}\s_-]/gu, '')
      .trim()
      .replaceAll(/\s/gu, '-');
    const before = taken.get(slug) ?? 0;
    taken.set(slug, before + 1);
    return before === 0 ? slug : `${slug}-${before}`;
  };
}

/** TeX as MathML; what cannot be read ends the build. */
export function texMath(tex: string, displayMode: boolean): string {
  return temml.renderToString(tex, { displayMode, throwOnError: true });
}

/** A page of Markdown as HTML, with its tables free to scroll and its equations typeset. */
export function writeMarkdown(text: string, targets: Targets): Written {
  const anchor = anchors();
  const sections: { id: string; heading: string; level: number; text: string }[] = [];
  const marked = new Marked({ gfm: true, extensions: [displayedTex, inlineTex] });
  marked.use({
    renderer: {
      heading({ tokens, depth }) {
        const heading = plainText(tokens);
        const id = anchor(heading);
        sections.push({ id, heading, level: depth, text: '' });
        const self = depth === 1 ? '' : ` <a class="anchor" href="#${id}" aria-label="Link to this section">#</a>`;
        return `<h${depth} id="${id}">${this.parser.parseInline(tokens)}${self}</h${depth}>\n`;
      },
      link({ href, tokens }) {
        return `<a href="${escapedHtml(targets.link(href))}">${this.parser.parseInline(tokens)}</a>`;
      },
      image({ href, text: words }) {
        return `<img src="${escapedHtml(targets.link(href))}" alt="${escapedHtml(words)}" loading="lazy">`;
      },
      codespan({ text: code }) {
        const written = `<code>${escapedHtml(code)}</code>`;
        const target = targets.named(code);
        return target === undefined ? written : `<a href="${target}">${written}</a>`;
      },
      code({ text: code, lang }) {
        const [tag = 'text'] = (lang ?? '').split(' ').filter((word) => word !== '');
        return `<pre class="${escapedHtml(tag)}" tabindex="0"><code>${escapedHtml(code)}</code></pre>\n`;
      },
      table(token) {
        const row = (cells: Tokens.TableCell[], tag: string): string =>
          `<tr>${cells.map((cell) => `<${tag}>${this.parser.parseInline(cell.tokens)}</${tag}>`).join('')}</tr>`;
        return scrolling(
          `<table><thead>${row(token.header, 'th scope="col"').replaceAll('</th scope="col">', '</th>')}</thead><tbody>${token.rows.map((cells) => row(cells, 'td')).join('\n')}</tbody></table>`,
        );
      },
    },
  });
  const tokens = marked.lexer(text.replaceAll(/<!--.*?-->\n?/gsu, ''));
  const html = tokens
    .map((token) => {
      const written = marked.parser([token]);
      const last = sections.at(-1);
      if (token.type !== 'heading' && last !== undefined) last.text += ` ${plainText([token])}`;
      return written;
    })
    .join('');
  return { title: sections[0]?.heading ?? '', html, sections };
}

/** A wide table scrolls in its own box, which the keyboard reaches. */
export function scrolling(table: string): string {
  return `<div class="wide" tabindex="0" role="group" aria-label="Table">${table}</div>\n`;
}

/** The words of tokens without their marks. */
function plainText(tokens: readonly Token[]): string {
  return tokens
    .map((token): string => {
      if (token.type === 'table') {
        const { header, rows } = token as Tokens.Table;
        return [header, ...rows].map((row) => row.map(({ tokens: cell }) => plainText(cell)).join(' ')).join(' ');
      }
      if (token.type === 'list') return (token as Tokens.List).items.map((item) => plainText(item.tokens)).join(' ');
      if (token.type === 'code' || token.type === 'html') return '';
      if ('tokens' in token && token.tokens !== undefined) return plainText(token.tokens);
      return 'text' in token ? String(token.text) : '';
    })
    .join('');
}

const displayedTex = {
  name: 'displayed',
  level: 'block' as const,
  start: (source: string) => source.indexOf('$$'),
  tokenizer(source: string) {
    const found = /^\$\$(?<tex>[^$]+)\$\$(?:\n|$)/u.exec(source);
    return found === null ? undefined : { type: 'displayed', raw: found[0], tex: found.groups?.['tex'] ?? '' };
  },
  renderer: (token: Tokens.Generic) => `<div class="displayed">${texMath(String(token['tex']), true)}</div>\n`,
};

const inlineTex = {
  name: 'inlined',
  level: 'inline' as const,
  start: (source: string) => source.indexOf('$'),
  tokenizer(source: string) {
    const found = /^\$(?<tex>[^\s$](?:[^$\n]*[^\s$])?)\$(?!\d)/u.exec(source);
    return found === null ? undefined : { type: 'inlined', raw: found[0], tex: found.groups?.['tex'] ?? '' };
  },
  renderer: (token: Tokens.Generic) => texMath(String(token['tex']), false),
};
