import { CaseError, type CaseIssue, shown } from '../json/case-error.js';
import { isNumber } from '../json/formula-input.js';
import { nearMiss } from '../json/near-miss.js';
import { columnOf } from '../json/rows.js';
import { type Kind, readQuantity, type Unit, unitOf, units } from '../quantity/index.js';
import { toSi } from '../quantity/quantity.js';
import type { SurveyRow } from '../survey/index.js';

/** Each column of a survey with its kind and what it is. */
const COLUMNS: Readonly<Record<keyof SurveyRow, readonly [kind: Kind, says: string, example: string]>> = {
  outsideDiameter: ['length', 'outside diameter', '323.9 mm'],
  wallThickness: ['length', 'nominal wall', '9.53 mm'],
  yieldStrength: ['stress', 'specified minimum yield strength', '359 MPa'],
  designPressure: ['gauge pressure', 'design pressure', '70 bar'],
  defectDepth: ['length', 'deepest point of the loss', '3.1 mm'],
  defectLength: ['length', 'length of the loss along the pipe', '60 mm'],
  depthRate: ['corrosion rate', 'growth of the depth; 0 where it is known not to grow', '0.1 mm/year'],
  lengthRate: ['corrosion rate', 'growth of the length at each end; 0 where it is known not to grow', '0 mm/year'],
};

const NAMES = Object.keys(COLUMNS) as (keyof SurveyRow)[];

/** A row as it was read, or why it cannot be. */
type ReadRow = { readonly ok: true; readonly row: SurveyRow } | { readonly ok: false; readonly because: string };

/** How the rows of a file are read. */
export interface SurveyReader {
  readonly cells: number;
  /** Columns that no input takes; the text of `id` goes through to the answer. */
  readonly unused: readonly string[];
  read(cells: readonly string[]): ReadRow;
  idOf(cells: readonly string[]): string | undefined;
}

/**
 * Reads the header of a survey, `defectDepth [mm],defectLength [mm]`, and what is the same on every row, `depthRate="0.1 mm/year"`.
 *
 * @throws CaseError with every issue at once: a column twice, a unit of another kind, an input that stands nowhere
 */
export function surveyReader(header: readonly string[], constants: Readonly<Record<string, string>>): SurveyReader {
  const issues: CaseIssue[] = [];
  const columns = header.map(columnOf);
  const seen = new Set<string>();
  for (const { name } of columns) {
    if (name === '') issues.push(issue('header', header.join(','), 'has a column without a name'));
    else if (seen.has(name)) issues.push(issue(name, name, 'stands twice in the header; give each column once'));
    seen.add(name);
  }
  const fixed: Partial<Record<keyof SurveyRow, number>> = {};
  for (const [name, text] of Object.entries(constants)) {
    const known = NAMES.find((each) => each === name);
    if (known === undefined) issues.push(issue(name, text, `is no input of a survey; ${hint(name)}`));
    else if (seen.has(name))
      issues.push(issue(name, text, 'is given for all rows and stands in the header too; give it once'));
    else fixed[known] = numberOf(known, text, issues);
  }
  const readers = NAMES.map((name) => {
    const at = columns.findIndex((column) => column.name === name);
    if (at < 0) {
      if (!(name in fixed))
        issues.push(
          missing(
            name,
            [...seen].filter((each) => !NAMES.some((known) => known === each)),
          ),
        );
      return { name, at, unit: undefined };
    }
    const symbol = columns[at]?.unit ?? '';
    const [kind] = COLUMNS[name];
    const unit = symbol === '' ? undefined : unitOf(kind, symbol);
    if (symbol !== '' && unit === undefined)
      issues.push(
        issue(name, symbol, `is in no unit of ${kind}, which is written in ${Object.keys(units[kind]).join(', ')}`),
      );
    return { name, at, unit };
  });
  if (issues.length > 0) throw new CaseError(issues);
  const id = columns.findIndex(({ name }) => name === 'id');
  const used = new Set<string>([...NAMES, 'id']);
  return {
    cells: columns.length,
    unused: columns.map(({ name }) => name).filter((name) => !used.has(name)),
    idOf: (cells) => (id < 0 ? undefined : cells[id]),
    read: (cells) => {
      if (cells.length !== columns.length)
        return { ok: false, because: `${cells.length} cells where the header has ${columns.length}` };
      const row: Record<string, number> = {};
      for (const { name, at, unit } of readers) {
        const value = at < 0 ? fixed[name] : cellOf(name, cells[at] ?? '', unit);
        if (typeof value !== 'number') return { ok: false, because: value ?? `${name} is missing` };
        row[name] = value;
      }
      return { ok: true, row: row as unknown as SurveyRow };
    },
  };
}

/** The quantity of a cell, or what is wrong with it. */
function cellOf(name: keyof SurveyRow, cell: string, unit: Unit | undefined): number | string {
  const text = cell.trim();
  const [kind, , example] = COLUMNS[name];
  if (unit === undefined) {
    const reading = readQuantity(kind, text);
    return reading.ok ? reading.quantity : `${name}: ${reading.problem}`;
  }
  if (isNumber(text)) return toSi(Number(text), unit);
  return `${name} is ${shown(text)}; expected a bare number, as in ${example.replace(/ .*/u, '')}, since the header has its unit`;
}

function numberOf(name: keyof SurveyRow, text: string, issues: CaseIssue[]): number {
  const reading = readQuantity(COLUMNS[name][0], text);
  if (reading.ok) return reading.quantity;
  issues.push({ path: name, value: text, expected: `a ${COLUMNS[name][0]}`, message: `${name}: ${reading.problem}` });
  return Number.NaN;
}

function missing(name: keyof SurveyRow, strange: readonly string[]): CaseIssue {
  const [kind, says, example] = COLUMNS[name];
  const unit = example.replace(/^\S+ /u, '');
  const near = nearMiss(name, strange);
  const meant = near === undefined ? '' : `; the column "${near}" may be meant`;
  const message = `${name} (${says}) stands in no column${meant}; write ${name} [${unit}] in the header, or ${name}="${example}" for all rows`;
  return { path: name, value: undefined, expected: `a ${kind}`, example, message };
}

function hint(name: string): string {
  const near = nearMiss(name, NAMES);
  return near === undefined ? `it takes ${NAMES.join(', ')}` : `did you mean ${near}?`;
}

function issue(path: string, value: unknown, says: string): CaseIssue {
  return { path, value, expected: 'one column for each input', message: `${path} ${says}` };
}
