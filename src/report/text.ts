import type { Block, EquationLine } from './document.js';
import { TIE } from './substitute.js';

/** The widest line of a text sheet: what a terminal and a sheet of paper hold. */
export const WIDTH = 100;

/** How far what belongs to a step stands in from its title. */
const INDENT = 4;
/** A first column wider than this gets its lines to itself. */
const LABEL = 36;

/** Breaks a text at its spaces; a word that is wider than the line stays whole unless it leaves no choice. */
export function wrapText(text: string, width: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (let word of text.split(' ')) {
    if (line !== '' && line.length + 1 + word.length > width) {
      lines.push(line);
      line = '';
    }
    line = line === '' ? word : `${line} ${word}`;
    while (line.length > width) {
      lines.push(line.slice(0, width));
      word = line.slice(width);
      line = word;
    }
  }
  lines.push(line);
  return lines.filter((each, index) => each !== '' || index === 0);
}

function indented(lines: readonly string[], by: number, first = ' '.repeat(by)): string[] {
  return lines.map((line, index) => `${index === 0 ? first : ' '.repeat(by)}${line}`.trimEnd());
}

function headingLines({ level, text, mark }: Extract<Block, { sort: 'heading' }>): string[] {
  if (level === 1) return ['', `== ${text} ${'='.repeat(Math.max(2, WIDTH - text.length - 4))}`];
  if (level === 2) return ['', text, '-'.repeat(Math.min(text.length, WIDTH))];
  if (mark === undefined) return ['', ...wrapText(text, WIDTH)];
  const lines = wrapText(text, WIDTH - mark.length - 5);
  const last = lines.pop() ?? '';
  return ['', ...lines, `${last} ${'.'.repeat(WIDTH - last.length - mark.length - 2)} ${mark}`];
}

/** Columns as wide as their widest cell; the last one takes the rest of the line and is wrapped. */
function rowLines({ rows }: Extract<Block, { sort: 'rows' }>, indent: number): string[] {
  const count = Math.max(...rows.map((row) => row.length));
  const widths = Array.from({ length: count - 1 }, (_, column) =>
    Math.min(LABEL, Math.max(...rows.map((row) => (row.length > column + 1 ? (row[column] ?? '').length : 0)))),
  );
  return rows.flatMap((row) => {
    const lines: string[] = [];
    let line = ' '.repeat(indent);
    row.forEach((cell, column) => {
      const width = widths[column] ?? 0;
      if (column === row.length - 1) {
        const [first = '', ...rest] = wrapText(cell, Math.max(WIDTH - line.length, 20));
        lines.push(`${line}${first}`.trimEnd(), ...indented(rest, line.length));
      } else if (cell.length <= width) {
        line += `${cell.padEnd(width)}  `;
      } else {
        // Too wide for its column: it gets lines of its own, and the next cell stands below.
        lines.push(...indented(wrapText(cell, WIDTH - line.length), line.length, line));
        line = ' '.repeat(line.length + width + 2);
      }
    });
    return lines;
  });
}

const NUMBER = /^(?:|-|\.\.|-?[\d.]+(?:e-?\d+)?)$/u;

/** A table with its heads stacked word by word, so that narrow columns stay narrow. */
function tableLines({ head, rows }: Extract<Block, { sort: 'table' }>, indent: number): string[] {
  const widest = (texts: readonly string[]): number => Math.max(...texts.map((text) => text.length));
  const cells = (column: number): string[] => rows.map((row) => row[column] ?? '');
  const widths = head.map((title, column) => widest([...title.split(' '), ...cells(column)]));
  const taken = widths.slice(0, -1).reduce((sum, width) => sum + width + 2, indent);
  const last = widths.length - 1;
  widths[last] = Math.min(Math.max(widths[last] ?? 0, head[last]?.length ?? 0), Math.max(WIDTH - taken, 12));
  const right = head.map((_, column) => cells(column).every((cell) => NUMBER.test(cell)));
  const heads = head.map((title, column) => wrapText(title, widths[column] ?? 0));
  const height = Math.max(...heads.map((lines) => lines.length));
  const print = (row: readonly string[]): string[] => {
    const wrapped = wrapText(row[last] ?? '', widths[last] ?? 0);
    return wrapped.map((end, index) => {
      const line = [...(index === 0 ? row.slice(0, last) : row.slice(0, last).map(() => '')), end];
      const set = line.map((cell, column) => {
        const width = widths[column] ?? 0;
        return right[column] ? cell.padStart(width) : cell.padEnd(width);
      });
      return `${' '.repeat(indent)}${set.join('  ')}`.trimEnd();
    });
  };
  const stacked = Array.from({ length: height }, (_, at) =>
    heads.map((lines) => lines[at - height + lines.length] ?? ''),
  );
  const rule = `${' '.repeat(indent)}${widths.map((width) => '-'.repeat(width)).join('  ')}`;
  return [...stacked.flatMap(print), rule, ...rows.flatMap(print)];
}

/** Equals signs under one another; a line too long is broken before an operator and goes on below. */
function equationLines(left: string, lines: readonly EquationLine[], indent: number): string[] {
  const start = indent + left.length + 3;
  const room = WIDTH - start;
  return lines.flatMap(({ text, note }, index) => {
    const wrapped = breakEquation(text, room);
    const first = index === 0 ? `${' '.repeat(indent)}${left} = ` : `${' '.repeat(start - 2)}= `;
    const out = wrapped.map((part, at) => `${at === 0 ? first : ' '.repeat(start + 2)}${part}`);
    if (note !== undefined) {
      const last = out.length - 1;
      const beside = `${out[last] ?? ''}    (${note})`;
      if (beside.length <= WIDTH) out[last] = beside;
      else out.push(...indented(wrapText(`(${note})`, room - 2), start + 2));
    }
    return out;
  });
}

interface BreakPoint {
  readonly at: number;
  /** How deep in parentheses and products the break lies; the shallowest reads best. */
  readonly depth: number;
}

function breakPoints(text: string): BreakPoint[] {
  const points: BreakPoint[] = [];
  let depth = 0;
  for (let at = 0; at < text.length; at++) {
    const character = text[at] ?? '';
    if (character === '(') depth += 1;
    if (character === ')') depth -= 1;
    const operator = / (?:([-+<>=!]=?|and|or)|[*/\u00d7]) /uy;
    operator.lastIndex = at;
    const found = character === ' ' ? operator.exec(text) : null;
    if (found !== null) points.push({ at, depth: 2 * depth + (found[1] === undefined ? 1 : 0) });
    else if (character === ' ' && text[at - 1] === ',') points.push({ at, depth: 2 * depth - 1 });
  }
  return points;
}

/** Breaks before an operator, outside parentheses and between terms where that leaves no line half empty; lines below stand in by two. */
function breakEquation(text: string, width: number, below = width - 2): string[] {
  if (text.length <= width) return [text];
  const fits = breakPoints(text).filter(({ at }) => at <= width);
  const full = fits.filter(({ at }) => at >= width / 2);
  const [best] = (full.length > 0 ? full : fits).sort((a, b) => a.depth - b.depth || b.at - a.at);
  if (best === undefined) return wrapText(text, below);
  return [text.slice(0, best.at), ...breakEquation(text.slice(best.at + 1), below, below)];
}

function blockLines(block: Block, indent: number): string[] {
  switch (block.sort) {
    case 'title':
      return [...wrapText(block.text, WIDTH), '='.repeat(WIDTH)];
    case 'heading':
      return headingLines(block);
    case 'paragraph':
      return indented(wrapText(block.text, WIDTH - indent), indent);
    case 'list':
      return block.items.flatMap((item) =>
        indented(wrapText(item, WIDTH - indent - 2), indent + 2, `${' '.repeat(indent)}- `),
      );
    case 'rows':
      return block.rows.length === 0 ? [] : rowLines(block, indent);
    case 'table':
      return tableLines(block, indent);
    case 'equation':
      return equationLines(block.left, block.lines, indent);
    case 'signatures':
    case 'figures':
      return [];
  }
}

/** Blocks as plain text of at most 78 columns. */
export function toText(blocks: readonly Block[]): string {
  const lines: string[] = [];
  let indent = 0;
  for (const block of blocks) {
    if (block.sort === 'heading') indent = block.level === 3 ? INDENT : 0;
    const own = blockLines(block, indent);
    if (own.length === 0) continue;
    if (lines.length > 0 && lines.at(-1) !== '' && own[0] !== '') lines.push('');
    lines.push(...own);
  }
  return `${lines.join('\n').replaceAll(TIE, ' ').trimStart()}\n`;
}
