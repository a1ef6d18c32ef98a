import { CaseError, shown } from './case-error.js';
import { parseJson } from './parse-json.js';

/**
 * Rows of texts from a file: a JSON array, or a CSV table whose header names each column with its unit, such as
 * `position [mm],depth [mm]`. A cell then reads as the number with that unit: `12.5 mm`.
 *
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
  const columns = cellsOf(lines[0] ?? '').map(columnOf);
  if (columns.length === 0 || columns.some(({ name }) => name === '')) {
    const example = 'position [mm],depth [mm]';
    throw failure(path, lines[0], `${path} has no header; the first line of a CSV table reads like "${example}"`);
  }
  return lines.slice(1).map((line, index) => {
    const cells = cellsOf(line);
    if (cells.length !== columns.length) {
      const counts = `${cells.length} cells where the header has ${columns.length}`;
      throw failure(`${path}[${index}]`, line, `${path}[${index}] is ${shown(line)}, ${counts}`);
    }
    return Object.fromEntries(columns.map(({ name, unit }, column) => [name, joined(cells[column] ?? '', unit)]));
  });
}

function cellsOf(line: string): string[] {
  if (line.trim() === '') return [];
  return line.split(line.includes(';') ? ';' : ',').map((cell) => cell.trim().replace(/^"(.*)"$/u, '$1'));
}

/** `position [mm]` is the column `position` in `mm`; without brackets the cells bring their own units. */
function columnOf(header: string): { name: string; unit: string } {
  const groups = /^(?<name>[^[\]]*?)\s*(?:\[(?<unit>[^[\]]*)\])?$/u.exec(header)?.groups;
  return { name: groups?.['name'] ?? '', unit: groups?.['unit'] ?? '' };
}

function joined(cell: string, unit: string): string {
  return unit === '' || cell === '' ? cell : `${cell} ${unit}`;
}

function failure(path: string, value: unknown, message: string): CaseError {
  return new CaseError([{ path, value, expected: 'a JSON array or a CSV table with a header', message }]);
}
