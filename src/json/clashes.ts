import { type Amount, type Kind, type Quantity, siSymbol, unitOf, writeQuantity } from '../quantity/index.js';
import { fromSi } from '../quantity/quantity.js';
import type { RepairCase } from '../repair/case/case.js';
import type { Contradiction } from '../repair/case/contradiction.js';
import { contradictions } from '../repair/case/contradictions.js';
import { valueAt } from '../repair/case/place.js';
import { type CaseIssue, shown } from './case-error.js';
import type { TypedMap } from './typed.js';

/**
 * What contradicts itself in a case whose every field is right by itself: a defect deeper than the wall, points out of
 * order. Each issue quotes the texts that clash, and gives a text that would not.
 */
export function clashes(repairCase: RepairCase, document: unknown, typed: TypedMap): CaseIssue[] {
  const issues: CaseIssue[] = [];
  contradictions(repairCase, (found) => issues.push(issueOf(found, repairCase, document, typed)));
  return issues;
}

function issueOf(found: Contradiction, repairCase: RepairCase, document: unknown, typed: TypedMap): CaseIssue {
  const { path, must, limit = '', passes } = found;
  const { text, amounts = [] } = must;
  const unit = typed.get(path)?.unit ?? typed.get(limit)?.unit;
  // A limit that is itself a field of the document is quoted as it was typed, any other in the unit of the field at fault.
  const quoted = amounts.map((amount, index) => {
    const asTyped = index === 0 ? typed.get(limit)?.text.trim() : undefined;
    return asTyped ?? inUnit(amount, unit);
  });
  const expected = text.replaceAll(/\{(\d)\}/gu, (_, index: string) => quoted[Number(index)] ?? '');
  const value = valueAt(document, path);
  const example = passes === undefined ? undefined : quoted[amounts.indexOf(passes)];
  const such = example === undefined ? '' : `, for example ${JSON.stringify(example)}`;
  const issue = {
    path,
    value,
    expected,
    message: `${path} ${is(found, value, repairCase, unit)}; it must ${expected}${such}`,
  };
  return example === undefined ? issue : { ...issue, example };
}

/** What stands at the field at fault: as it was typed, and what a row of a table gave in its place. */
function is({ path, must }: Contradiction, value: unknown, repairCase: RepairCase, unit: string | undefined): string {
  if (value === undefined) return 'is left out';
  const [limit] = must.amounts ?? [];
  const held = valueAt(repairCase, path);
  if (typeof value !== 'object' || typeof held !== 'number' || limit === undefined) return `is ${shown(value)}`;
  return `is ${shown(value)}, which gives ${inUnit({ name: path, kind: limit.kind, value: held }, unit)}`;
}

/** An amount for a sentence: in full where that is short, else to six digits, rounded so that a limit holds. */
function inUnit({ kind, value, toward }: Amount, wanted: string | undefined): string {
  if (kind === 'number' || kind === 'count') return String(rounded(value, toward));
  const symbol = wanted !== undefined && unitOf(kind, wanted) !== undefined ? wanted : siSymbol(kind);
  const exact = writeQuantity(kind, value as Quantity<Kind>, symbol);
  if (exact.length <= 12) return exact;
  const unit = unitOf(kind, symbol);
  return unit === undefined ? exact : `${rounded(fromSi(value, unit), toward)} ${symbol}`;
}

function rounded(value: number, toward: Amount['toward']): number {
  const nearest = Number(value.toPrecision(6));
  const step = 10 ** (Math.floor(Math.log10(Math.abs(value))) - 5);
  if (toward === 'up' && nearest < value) return Number((nearest + step).toPrecision(6));
  if (toward === 'down' && nearest > value) return Number((nearest - step).toPrecision(6));
  return nearest;
}
