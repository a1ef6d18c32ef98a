import type { Block, EquationLine } from './document.js';
import { escapedHtml } from './html-text.js';
import { isWide, sizeStep } from './math-width.js';
import { equationMath, symbolMath } from './mathml.js';
import { pagePolicy } from './page-policy.js';
import { sheetStyle } from './sheet-style.js';
import { TIE } from './substitute.js';

/** Blocks as an article of HTML, to stand in a page of somebody's own: MathML, no script, nothing from elsewhere. */
export function toHtmlFragment(blocks: readonly Block[]): string {
  return `<article class="hoopwright-sheet">\n${parts(blocks).join('\n')}\n</article>`;
}

/** Each part of a sheet, from one head of the first level to the next, is a section of its own. */
function parts(blocks: readonly Block[]): string[] {
  const sections: { name: string; blocks: Block[] }[] = [{ name: 'front', blocks: [] }];
  for (const block of blocks) {
    if (block.sort === 'heading' && block.level === 1)
      sections.push({ name: block.text.toLowerCase().replaceAll(/[^a-z]+/gu, '-'), blocks: [] });
    sections.at(-1)?.blocks.push(block);
  }
  return sections.map(({ name, blocks: own }) => `<section class="${name}">\n${withSteps(own).join('\n')}\n</section>`);
}

/** The blocks of a part; a step, from its head to the next head, is a division of its own. */
function withSteps(blocks: readonly Block[]): string[] {
  const html: string[] = [];
  let isStep = false;
  for (const block of blocks) {
    if (block.sort === 'heading') {
      if (isStep) html.push('</div>');
      isStep = block.level === 3;
      if (isStep) html.push('<div class="step">');
    }
    html.push(blockHtml(block));
  }
  if (isStep) html.push('</div>');
  return html.filter((each) => each !== '');
}

/** Blocks as one whole page that needs nothing else: on a screen of any width, and on A4. */
export function toHtml(blocks: readonly Block[]): string {
  const title = blocks.find((block) => block.sort === 'title')?.text ?? 'Calculation sheet';
  return [
    '<!doctype html>',
    '<html lang="en"><head><meta charset="utf-8">',
    pagePolicy(),
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${escapedHtml(title)}</title>`,
    `<style>${sheetStyle(title)}</style></head><body>`,
    `<main>${toHtmlFragment(blocks)}</main>`,
    '</body></html>',
    '',
  ].join('\n');
}

function blockHtml(block: Block): string {
  switch (block.sort) {
    case 'title':
      return `<h1>${escapedHtml(block.text)}</h1>`;
    case 'heading':
      return heading(block);
    case 'paragraph':
      return `<p>${text(block.text)}</p>`;
    case 'list':
      return `<ul>${block.items.map((item) => `<li>${text(item)}</li>`).join('')}</ul>`;
    case 'rows':
      return rows(block);
    case 'table':
      return table(block);
    case 'equation':
      return equation(block.left, block.lines);
    case 'signatures':
      return signatures(block.who);
    case 'figures':
      return `<div class="figures">${block.svgs.map((svg) => `<figure>${svg}</figure>`).join('')}</div>`;
  }
}

function signatures(who: readonly string[]): string {
  const rows = who
    .map((each) => `<tr><th scope="row">${escapedHtml(each)}</th><td></td><td></td><td></td></tr>`)
    .join('');
  return `<table class="signatures"><thead><tr><td></td><th scope="col">Name</th><th scope="col">Date</th><th scope="col">Signature</th></tr></thead><tbody>${rows}</tbody></table>`;
}

function heading({ level, text: words, mark }: Extract<Block, { sort: 'heading' }>): string {
  const tag = `h${level + 1}`;
  const marked = mark === undefined ? '' : ` <small>${escapedHtml(mark.replaceAll(/[[\]]/gu, ''))}</small>`;
  return `<${tag}>${escapedHtml(level === 1 ? inSentence(words) : words)}${marked}</${tag}>`;
}

/** Heads in capitals are for text alone. */
function inSentence(words: string): string {
  return `${words.charAt(0)}${words.slice(1).toLowerCase()}`;
}

function rows({ rows: lines, code }: Extract<Block, { sort: 'rows' }>): string {
  if (lines.length === 0) return '';
  const columns = Math.max(...lines.map((line) => line.length));
  // A row of symbols is called by its words, which stand behind the symbol.
  const named = code === true ? 1 : 0;
  const cell = (words: string, column: number): string => {
    if (code === true && column === 0) return `<td>${math(symbolMath(words))}</td>`;
    return column === named && words !== '' ? `<th scope="row">${text(words)}</th>` : `<td>${text(words)}</td>`;
  };
  const body = lines
    .map(
      (line) => `<tr>${Array.from({ length: columns }, (_, column) => cell(line[column] ?? '', column)).join('')}</tr>`,
    )
    .join('');
  return `<table class="${code === true ? 'symbols' : 'rows'}"><tbody>${body}</tbody></table>`;
}

const NUMBER = /^(?:|-|\.\.|-?[\d.]+(?:e-?\d+)?)$/u;

function table({ head, rows: lines }: Extract<Block, { sort: 'table' }>): string {
  const right = head.map((_, column) => lines.every((line) => NUMBER.test(line[column] ?? '')));
  const set = (column: number): string => (right[column] === true ? ' class="number"' : '');
  const heads = head.map((words, column) => `<th scope="col"${set(column)}>${text(words)}</th>`).join('');
  const body = lines
    .map((line) => `<tr>${head.map((_, column) => `<td${set(column)}>${text(line[column] ?? '')}</td>`).join('')}</tr>`)
    .join('');
  return `<table class="columns"><thead><tr>${heads}</tr></thead><tbody>${body}</tbody></table>`;
}

/** Equals signs under one another. */
function equation(left: string, lines: readonly EquationLine[]): string {
  const body = lines.map(({ text: words, note }, index) => {
    const side = equationMath(words);
    const written = side === undefined ? `<mtext>${escapedHtml(words)}</mtext>` : side;
    const beside = note === undefined ? '' : `<span class="note">${text(note)}</span>`;
    const own = index === 0 ? symbolMath(left) : `<mphantom>${symbolMath(left)}</mphantom>`;
    const size = sizeStep(words);
    const onPaper = size === 4 ? `<span class="on-paper">${text(`${index === 0 ? left : ''} = ${words}`)}</span>` : '';
    return `<div class="line size-${size}">${math(`${own}<mo>=</mo>${written}`, true)}${onPaper}${beside}</div>`;
  });
  // What is moved sideways has to be reached by the keyboard.
  const isMoved = lines.some(({ text: words, note = '' }) => isWide(words) || note !== '');
  const reached = isMoved ? ' tabindex="0" role="group" aria-label="Equation"' : '';
  return `<div class="equation"${reached}>${body.join('')}</div>`;
}

function math(inside: string, asBlock = false): string {
  const display = asBlock ? ' displaystyle="true"' : '';
  return `<math${display}><mrow>${inside}</mrow></math>`;
}

function text(words: string): string {
  return escapedHtml(words).replaceAll(TIE, '&nbsp;');
}
