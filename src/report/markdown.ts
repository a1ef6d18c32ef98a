import type { Block, EquationLine } from './document.js';
import { TIE } from './substitute.js';

const FENCE = '```';

/** Marks of Markdown that a number or a name may hold by chance. */
function escaped(text: string): string {
  return text.replaceAll(/[\\`*_|<>[\]]/gu, '\\$&');
}

function code(text: string): string {
  return text === '' ? '' : `\`${text.replaceAll('|', '\\|')}\``;
}

function tableLine(cells: readonly string[]): string {
  return `| ${cells.join(' | ')} |`;
}

/** A table without heads needs an empty head in Markdown. */
function rowLines({ rows, code: asCode }: Extract<Block, { sort: 'rows' }>): string[] {
  const count = Math.max(...rows.map((row) => row.length));
  const columns = Array.from({ length: count }, (_, column) => column);
  const cell = (text: string, column: number): string =>
    asCode === true && column < count - 1 ? code(text.replace(/^= /u, '')) : escaped(text);
  return [
    tableLine(columns.map(() => '')),
    `|${' --- |'.repeat(count)}`,
    ...rows.map((row) => tableLine(columns.map((column) => cell(row[column] ?? '', column)))),
  ];
}

function tableLines({ head, rows }: Extract<Block, { sort: 'table' }>): string[] {
  return [
    tableLine(head.map(escaped)),
    `|${' --- |'.repeat(head.length)}`,
    ...rows.map((row) => tableLine(head.map((_, column) => escaped(row[column] ?? '')))),
  ];
}

function equationLines(left: string, lines: readonly EquationLine[]): string[] {
  const margin = ' '.repeat(left.length);
  return [
    FENCE,
    ...lines.map(
      ({ text, note }, index) => `${index === 0 ? left : margin} = ${text}${note === undefined ? '' : `    (${note})`}`,
    ),
    FENCE,
  ];
}

function blockLines(block: Block): string[] {
  switch (block.sort) {
    case 'title':
      return [`# ${escaped(block.text)}`];
    case 'heading':
      return [
        `${'#'.repeat(block.level + 1)} ${escaped(block.text)}${block.mark === undefined ? '' : ` \`${block.mark}\``}`,
      ];
    case 'paragraph':
      return [escaped(block.text)];
    case 'list':
      return block.items.map((item) => `- ${escaped(item)}`);
    case 'rows':
      return block.rows.length === 0 ? [] : rowLines(block);
    case 'table':
      return tableLines(block);
    case 'equation':
      return equationLines(block.left, block.lines);
    case 'signatures':
    case 'figures':
      return [];
  }
}

/** Blocks as Markdown: headings, tables, equations as code. */
export function toMarkdown(blocks: readonly Block[]): string {
  const parts = blocks.map((block) => blockLines(block).join('\n')).filter((part) => part !== '');
  return `${parts.join('\n\n').replaceAll(TIE, ' ')}\n`;
}
