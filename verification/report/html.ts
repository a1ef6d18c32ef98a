import { readFileSync } from 'node:fs';
import temml from 'temml';
import { mathFonts } from '../../src/report/sheet-style.js';
import { type Block, type Run, runs, type Table, type Text } from './blocks.js';
import { documentBlocks } from './document.js';
import type { Report } from './shape.js';

/** The report as one HTML file that needs nothing else: style, plots and equations stand in it, and there is no script. */

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

const math = (tex: string, displayMode: boolean): string =>
  temml.renderToString(tex, { displayMode, annotate: false, throwOnError: true });

/** Long names may break after a slash, a hyphen or a dot, so that columns stay narrow. */
const breakable = (text: string): string => escaped(text).replaceAll(/(?<=[/_-])(?=\w)/gu, '<wbr>');

/** The page of each anchor, in the form that has pages. */
export type Pages = ReadonlyMap<string, number>;

function runText(run: Run, pages: Pages | undefined): string {
  if (typeof run === 'string') return escaped(run);
  if ('code' in run) return run.code === '' ? '' : `<code>${breakable(run.code)}</code>`;
  if ('strong' in run) return `<b>${escaped(run.strong)}</b>`;
  if ('tex' in run) return math(run.tex, false);
  if ('pageOf' in run)
    return pages === undefined ? '' : `<a href="#${run.pageOf}">${pages.get(run.pageOf) ?? '000'}</a>`;
  return `<a href="#${run.to}">${breakable(run.link)}</a>`;
}

type Inline = (text: Text) => string;

const inlineFor =
  (pages: Pages | undefined): Inline =>
  (text) =>
    runs(text)
      .map((run) => runText(run, pages))
      .join('');

const slug = (text: string): string => text.replaceAll(/[^a-z]+/giu, '-').toLowerCase();

/** Rows of a table that stands beside another one of its kind: as many as a column of a page holds. */
const COLUMN = 62;

const pagefuls = (rows: readonly string[]): string[][] =>
  Array.from({ length: Math.ceil(rows.length / COLUMN) }, (_, page) => rows.slice(page * COLUMN, (page + 1) * COLUMN));

function tableText({ head, rows, align = '', marks, ids, twofold, widths }: Table, inline: Inline): string {
  const style = (index: number): string => (align[index] === 'r' ? ' class="r"' : '');
  const columns =
    widths === undefined
      ? ''
      : `<colgroup>${widths.map((width) => `<col style="width:${width}%">`).join('')}</colgroup>`;
  const headless = head.every((cell) => inline(cell) === '');
  const top = headless
    ? ''
    : `<thead><tr>${head.map((cell, index) => `<th${style(index)}>${inline(cell)}</th>`).join('')}</tr></thead>`;
  const body = rows.map((row, place) => {
    const mark = marks?.[place];
    const id = ids?.[place] ?? '';
    const cells = row.map((cell, index) => `<td${style(index)}>${inline(cell)}</td>`).join('');
    return `<tr${id === '' ? '' : ` id="${escaped(id)}"`}${mark === undefined || mark === 'agrees' ? '' : ` class="${slug(mark)}"`}>${cells}</tr>`;
  });
  const set = (part: readonly string[]): string =>
    `<table${widths === undefined ? '' : ' class="fixed"'}>${columns}${top}<tbody>\n${part.join('\n')}\n</tbody></table>`;
  return twofold === true ? `<div class="twofold">${pagefuls(body).map(set).join('\n')}</div>` : set(body);
}

function blockText(block: Block, all: readonly Block[], pages: Pages | undefined): string {
  const inline = inlineFor(pages);
  switch (block.sort) {
    case 'contents':
      return contents(all, pages);
    case 'heading':
      return `<h${block.level} id="${block.id}">${breakable(block.text)}</h${block.level}>`;
    case 'paragraph':
      return `<p${block.strong === true ? ' class="lead"' : block.small === true ? ' class="small"' : ''}>${inline(block.text)}</p>`;
    case 'list':
      return `<ul>${block.items.map((item) => `<li>${inline(item)}</li>`).join('')}</ul>`;
    case 'equation':
      return `<div class="equation">${math(block.tex, true)}${block.note === '' ? '' : `<span class="note">${escaped(block.note)}</span>`}</div>`;
    case 'code':
      return `<pre>${escaped(block.text)}</pre>`;
    case 'plot':
      return `<figure>${block.svg}<figcaption>${escaped(block.title)}</figcaption></figure>`;
    case 'figures':
      return `<div class="figures">${block.items.map(({ value, label }) => `<div><b>${escaped(value)}</b><span>${escaped(label)}</span></div>`).join('')}</div>`;
    case 'table':
      return tableText(block, inline);
  }
}

function contents(blocks: readonly Block[], pages: Pages | undefined): string {
  const items = blocks.flatMap((block) =>
    block.sort === 'heading' && block.level === 2
      ? [
          `<li><a href="#${block.id}">${escaped(block.text)}</a>${pages === undefined ? '' : ` <span class="page">${pages.get(block.id) ?? '000'}</span>`}</li>`,
        ]
      : [],
  );
  return `<nav><h2>Contents</h2><ul>${items.join('')}</ul></nav>`;
}

/** @param pages of the anchors, where the file is printed by ourselves and pages are known */
export function html(report: Report, pages?: Pages): string {
  const { name, version } = report.identity;
  const blocks = documentBlocks(report, 'built');
  const title = `${name} ${version}: verification report`;
  const own = readFileSync(new URL('report.css', import.meta.url), 'utf8').replaceAll('{running-title}', title);
  const style = `${own}${mathFonts}\n`;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<title>${escaped(title)}</title>
<style>
${style}</style>
</head>
<body>
<main>
${blocks.map((block) => blockText(block, blocks, pages)).join('\n')}
</main>
</body>
</html>
`;
}
