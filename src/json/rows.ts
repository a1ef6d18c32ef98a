import { CaseError, shown } from './case-error.js';
import { parseJson } from './parse-json.js';

/**
 * Rows of texts from a file: a JSON array, or a CSV table whose header names each column with its unit, such as
 * `position [mm],depth [mm]`. A cell then reads as the number with that unit: `12.5 mm`.
 *
 * @param text the whole file
 * @param path names the rows in a refusal
 * @throws CaseError
 */
export function parseRows(text: string, path: string): unknown[] {
  const content = text.replace(/^\uFEFF/u, '');
  if (/^\s*[[{]/u.test(content)) {
    const rows = parseJson(content);
    if (Array.isArray(rows)) return rows;
    throw failure(path, rows, `${path} holds ${shown(rows)}; expected a JSON array of rows`);
  }
  return tableRows(content, path);
}

function tableRows(content: string, path: string): Record<string, string>[] {
  const lines = content.split(/\r\n|\r|\n/u).filter((line) => line.trim() !== '');
  const header = lines[0] ?? '';
  const mark = header.includes(';') ? ';' : ',';
  const columns = cellsOf(header, mark).map(columnOf);
  const names = columns.map(({ name }) => name);
  if (columns.length === 0 || names.includes('')) {
    const example = 'position [mm],depth [mm]';
    throw failure(path, header, `${path} has no header; the first line of a CSV table reads like "${example}"`);
  }
  const seen = new Set<string>();
  const twice = names.find((name) => seen.size === seen.add(name).size);
  if (twice !== undefined)
    throw failure(path, header, `${path} has two columns called ${shown(twice)}; give each column once`);
  return lines.slice(1).map((line, index) => {
    const cells = cellsOf(line, mark);
    if (cells.length !== columns.length) {
      const counts = `${cells.length} cells where the header has ${columns.length}`;
      throw failure(`${path}[${index}]`, line, `${path}[${index}] is ${shown(line)}, ${counts}`);
    }
    return Object.fromEntries(columns.map(({ name, unit }, column) => [name, joined(cells[column] ?? '', unit)]));
  });
}

/** The mark is that of the header: a row with another one has one cell, and is refused by its count. */
function cellsOf(line: string, mark: string): string[] {
  if (line.trim() === '') return [];
  return line.split(mark).map((cell) => cell.trim().replace(/^"(.*)"$/su, '$1'));
}

/** `position [mm]` is the column `position` in `mm`; without brackets the cells bring their own units. */
export function columnOf(header: string): { name: string; unit: string } {
  const from = header.indexOf('[');
  const unit = from >= 0 && header.endsWith(']') ? header.slice(from + 1, -1) : '';
  const name = (from >= 0 ? header.slice(0, from) : header).trim();
  const isPlain = from < 0 ? !header.includes(']') : header.endsWith(']') && !/[[\]]/u.test(unit);
  return isPlain && !name.includes(']') ? { name, unit: unit.trim() } : { name: '', unit: '' };
}

function joined(cell: string, unit: string): string {
  return unit === '' || cell === '' ? cell : `${cell} ${unit}`;
}

function failure(path: string, value: unknown, message: string): CaseError {
  return new CaseError([{ path, value, expected: 'a JSON array or a CSV table with a header', message }]);
}
