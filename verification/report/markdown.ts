import { type Block, type Run, runs, type Table, type Text } from './blocks.js';
import { documentBlocks } from './document.js';
import type { Report } from './shape.js';

/** The report as Markdown, the form that is kept, for reading in the repository. Its plots stand beside it as files. */

const escaped = (text: string): string =>
  text
    .replaceAll('\\', '\\\\')
    .replaceAll('<', '&lt;')
    .replaceAll('|', '\\|')
    .replaceAll('*', '\\*')
    .replaceAll('[', '\\[');

function runText(run: Run): string {
  if (typeof run === 'string') return escaped(run);
  if ('code' in run) return run.code === '' ? '' : `\`${run.code.replaceAll('|', '\\|')}\``;
  // A space before the closing marks would keep them from closing.
  if ('strong' in run) return `**${escaped(run.strong.trimEnd())}**${/\s$/u.test(run.strong) ? ' ' : ''}`;
  if ('tex' in run) return `$${run.tex.replaceAll('|', '\\vert ')}$`;
  // This form has no pages: the link leads there.
  if ('pageOf' in run) return '';
  return `[${escaped(run.link)}](#${run.to})`;
}

const inline = (text: Text): string => runs(text).map(runText).join('').replaceAll('\n', ' ').trim();

const isPage = (cell: Text): boolean => runs(cell).some((run) => typeof run === 'object' && 'pageOf' in run);

function tableText({ head, rows, align = '', ids }: Table): string {
  const columns = head.map((_, index) => index).filter((index) => !rows.every((row) => isPage(row[index] ?? '')));
  const own = (row: readonly Text[]): string[] => columns.map((index) => inline(row[index] ?? ''));
  const rule = columns.map((index) => (align[index] === 'r' ? '---:' : '---'));
  const body = rows.map((row, place) => {
    const id = ids?.[place] ?? '';
    const [first = '', ...rest] = own(row);
    return [id === '' ? first : `<a id="${id}"></a>${first}`, ...rest];
  });
  return [own(head), rule, ...body].map((cells) => `| ${cells.join(' | ')} |`).join('\n');
}

function blockText(block: Block, all: readonly Block[]): string {
  switch (block.sort) {
    case 'contents':
      return all
        .flatMap((each) =>
          each.sort === 'heading' && each.level === 2 ? [`- [${escaped(each.text)}](#${each.id})`] : [],
        )
        .join('\n');
    case 'heading':
      return `<a id="${block.id}"></a>\n\n${'#'.repeat(block.level)} ${escaped(block.text)}`;
    case 'paragraph':
      return block.strong === true ? `**${inline(block.text)}**` : inline(block.text);
    case 'list':
      return block.items.map((item) => `- ${inline(item)}`).join('\n');
    case 'equation':
      return `\`\`\`math\n${block.tex}${block.note === '' ? '' : ` \\qquad\\text{${block.note.replaceAll('_', '\\_')}}`}\n\`\`\``;
    case 'code':
      return `\`\`\`\n${block.text}\n\`\`\``;
    case 'plot':
      return `![${escaped(block.title)}](figures/${block.name}.svg)\n\n*${escaped(block.title)}*`;
    case 'figures':
      return block.items.map(({ value, label }) => `**${value}** ${escaped(label)}`).join(', ');
    case 'table':
      return tableText(block);
  }
}

export function markdown(report: Report): string {
  const blocks = documentBlocks(report, 'kept');
  return `${blocks.map((block) => blockText(block, blocks)).join('\n\n')}\n`;
}

/** The plots of this form by the names of their files. */
export function figures(report: Report): ReadonlyMap<string, string> {
  const plots = documentBlocks(report, 'kept').filter((block) => block.sort === 'plot');
  return new Map(plots.map(({ name, svg }) => [`${name}.svg`, `${svg}\n`]));
}
