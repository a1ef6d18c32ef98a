import { readFileSync } from 'node:fs';
import temml from 'temml';
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

function runText(run: Run): string {
  if (typeof run === 'string') return escaped(run);
  if ('code' in run) return run.code === '' ? '' : `<code>${breakable(run.code)}</code>`;
  if ('strong' in run) return `<b>${escaped(run.strong)}</b>`;
  if ('tex' in run) return math(run.tex, false);
  return `<a href="#${run.to}">${breakable(run.link)}</a>`;
}

const inline = (text: Text): string => runs(text).map(runText).join('');

const slug = (text: string): string => text.replaceAll(/[^a-z]+/giu, '-').toLowerCase();

function tableText({ head, rows, align = '', marks, widths }: Table): string {
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
    const cells = row.map((cell, index) => `<td${style(index)}>${inline(cell)}</td>`).join('');
    return `<tr${mark === undefined || mark === 'agrees' ? '' : ` class="${slug(mark)}"`}>${cells}</tr>`;
  });
  return `<table${widths === undefined ? '' : ' class="fixed"'}>${columns}${top}<tbody>\n${body.join('\n')}\n</tbody></table>`;
}

function blockText(block: Block, all: readonly Block[]): string {
  switch (block.sort) {
    case 'contents':
      return contents(all);
    case 'heading':
      return `<h${block.level} id="${block.id}">${breakable(block.text)}</h${block.level}>`;
    case 'paragraph':
      return `<p${block.strong === true ? ' class="lead"' : ''}>${inline(block.text)}</p>`;
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
      return tableText(block);
  }
}

function contents(blocks: readonly Block[]): string {
  const items = blocks.flatMap((block) =>
    block.sort === 'heading' && block.level === 2 ? [`<li><a href="#${block.id}">${escaped(block.text)}</a></li>`] : [],
  );
  return `<nav><h2>Contents</h2><ul>${items.join('')}</ul></nav>`;
}

export function html(report: Report): string {
  const { name, version } = report.identity;
  const blocks = documentBlocks(report, 'built');
  const title = `${name} ${version}: verification report`;
  const style = readFileSync(new URL('report.css', import.meta.url), 'utf8').replaceAll('{running-title}', title);
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
${blocks.map((block) => blockText(block, blocks)).join('\n')}
</main>
</body>
</html>
`;
}
