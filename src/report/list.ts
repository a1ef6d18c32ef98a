import type { OutputDeclaration } from '../formula/index.js';
import { isKind } from '../quantity/units/index.js';
import type { Block } from './document.js';
import { formatGiven } from './number.js';
import type { ChosenOptions } from './options.js';
import { numberIn, preferredUnit, unitText } from './units.js';

/** A list up to this length is printed whole; of a longer one the beginning and the end. */
const WHOLE = 14;
const BEGINNING = 8;
const END = 4;

/** Characters of a line of the sheet that a table may take, and between two of its columns. */
const LINE = 92;
const GAP = 2;

/** What a list is called and what its columns are. */
export type ListDeclaration = Pick<OutputDeclaration, 'columns' | 'name'>;

/** A profile or a history as a table, each column in one unit. */
export function listBlocks(
  { columns, name }: ListDeclaration,
  rows: readonly unknown[],
  options: ChosenOptions,
): Block[] {
  const first = rows[0];
  const names = Object.keys(columns ?? (typeof first === 'object' && first !== null ? first : { value: first }));
  const unitFor = (column: string): string | undefined => {
    const kind = columns?.[column] ?? '';
    return isKind(kind) ? preferredUnit(kind, column, options.units) : undefined;
  };
  const cell = (row: unknown, column: string): string => {
    const value = typeof row === 'object' && row !== null ? (row as Record<string, unknown>)[column] : row;
    const kind = columns?.[column] ?? '';
    const unit = unitFor(column);
    if (typeof value !== 'number') return String(value ?? '');
    return formatGiven(isKind(kind) && unit !== undefined ? numberIn(kind, value, unit) : value, options.digits);
  };
  const head = names.map((column) => {
    const unit = unitText(unitFor(column) ?? '1');
    return unit === '' ? spaced(column) : `${spaced(column)} [${unit}]`;
  });
  const written = rows.map((row, index) => [String(index + 1), ...names.map((column) => cell(row, column))]);
  const shown =
    rows.length <= WHOLE
      ? written
      : [...written.slice(0, BEGINNING), ['..', ...names.map(() => '..')], ...written.slice(-END)];
  return [
    { sort: 'paragraph', text: `${name.charAt(0).toUpperCase()}${name.slice(1)}:` },
    ...besideEachOther(['row', ...head], shown).map(
      (columns): Block => ({
        sort: 'table',
        head: columns.map((at) => (at === 0 ? 'row' : (head[at - 1] ?? ''))),
        rows: shown.map((row) => columns.map((at) => row[at] ?? '')),
      }),
    ),
  ];
}

/** Columns that a line of the sheet holds; the rest follows below, each time behind the number of the row. */
function besideEachOther(head: readonly string[], rows: readonly (readonly string[])[]): number[][] {
  const widths = head.map((name, at) =>
    rows.reduce((widest, row) => Math.max(widest, row[at]?.length ?? 0), name.length),
  );
  const [first = 0, ...others] = widths;
  const groups: number[][] = [[0]];
  let width = first;
  others.forEach((own, index) => {
    const group = groups[groups.length - 1] ?? [];
    if (group.length > 1 && width + GAP + own > LINE) {
      groups.push([0, index + 1]);
      width = first + GAP + own;
    } else {
      group.push(index + 1);
      width += GAP + own;
    }
  });
  return groups;
}

/** `relativeHumidity` in words; a symbol such as `T` or `a_T` stays as it is. */
function spaced(name: string): string {
  return name.replaceAll(/(?<=[a-z])[A-Z]/gu, (letter) => ` ${letter.toLowerCase()}`);
}
