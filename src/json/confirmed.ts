import { type Kind, type Quantity, readQuantity, siSymbol, unitOf, writeQuantity } from '../quantity/index.js';
import type { RepairCase } from '../repair/case/case.js';
import { coefficientTable, patternOf } from '../rules/index.js';
import { type CaseIssue, shown } from './case-error.js';
import type { CaseDocument } from './document-table.js';
import { nearMiss } from './near-miss.js';
import type { Typed, TypedMap } from './typed.js';

type Confirmed = NonNullable<RepairCase['confirmed']>;
type ConfirmedDocument = NonNullable<CaseDocument['confirmed']>;

/**
 * Reads the numbers that a document confirms: each as text in a unit of the kind that its path has in the rule set, or as a
 * plain number where it has none.
 */
export function readConfirmed(rows: ConfirmedDocument): {
  readonly confirmed: Confirmed;
  readonly issues: readonly CaseIssue[];
  readonly typed: TypedMap;
} {
  const issues: CaseIssue[] = [];
  const typed = new Map<string, Typed>();
  const confirmed = rows.map((row, index) => ({ ...row, value: readValue(row, `confirmed[${index}]`, typed, issues) }));
  return { confirmed, issues, typed };
}

function readValue(
  { path, value }: ConfirmedDocument[number],
  at: string,
  typed: Map<string, Typed>,
  issues: CaseIssue[],
): number {
  const shape = coefficientTable.get(patternOf(path));
  if (shape === undefined) {
    issues.push(unknownPath(path, at));
    return Number.NaN;
  }
  const { kind } = shape;
  if (kind === 'number' || kind === 'count') {
    if (typeof value === 'number') return value;
    issues.push(unfit(value, at, `a plain number, which ${path} is`, 3));
    return Number.NaN;
  }
  const example = writeQuantity(kind, 1 as Quantity<Kind>, siSymbol(kind));
  if (typeof value !== 'string') {
    issues.push(unfit(value, at, `a ${kind} as text with a unit, which ${path} is`, example));
    return Number.NaN;
  }
  const reading = readQuantity(kind, value);
  if (reading.ok) {
    typed.set(`${at}.value`, { text: value, unit: reading.unit, kind });
    return reading.quantity;
  }
  const expected = `a ${kind} as text with a unit`;
  issues.push({ path: `${at}.value`, value, expected, example, message: `${at}.value: ${reading.problem}` });
  return Number.NaN;
}

/** The document of what a case confirms: each number in the unit that it was typed in, else in SI. */
export function writeConfirmed(confirmed: Confirmed, typed: TypedMap): ConfirmedDocument {
  return confirmed.map((row, index) => {
    const kind = coefficientTable.get(patternOf(row.path))?.kind ?? 'number';
    if (kind === 'number' || kind === 'count') return row;
    const unit = typed.get(`confirmed[${index}].value`)?.unit;
    const symbol = unit !== undefined && unitOf(kind, unit) ? unit : siSymbol(kind);
    return { ...row, value: writeQuantity(kind, row.value as Quantity<Kind>, symbol) };
  });
}

function unfit(value: unknown, at: string, expected: string, example: unknown): CaseIssue {
  const such = `, for example ${JSON.stringify(example)}`;
  return {
    path: `${at}.value`,
    value,
    expected,
    example,
    message: `${at}.value is ${shown(value)}; expected ${expected}${such}`,
  };
}

function unknownPath(path: string, at: string): CaseIssue {
  const known = [...coefficientTable.keys()];
  const near = nearMiss(patternOf(path), known);
  const expected = 'the path of a number of the rule set';
  const hint = near === undefined ? `one of ${known.join(', ')}` : `did you mean ${JSON.stringify(near)}?`;
  const where = '# stands for the class of the repair, [] for a row, as in [0]';
  return {
    path: `${at}.path`,
    value: path,
    expected,
    message: `${at}.path is ${shown(path)}; expected ${expected}, ${hint} (${where})`,
  };
}
