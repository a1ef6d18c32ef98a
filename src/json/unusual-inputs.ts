import type { AnyFormula, InputKind } from '../formula/index.js';
import { fromSi } from '../quantity/quantity.js';
import { slipsInto, slipsInWords } from '../quantity/slips.js';
import { isKind, siSymbol, unitOf } from '../quantity/units/index.js';
import { formulas } from '../registry/index.js';
import { inputSpans } from '../registry/input-spans.js';
import type { CaseIssue } from './case-error.js';
import type { FormulaInput } from './formula-input.js';

const spanOf = inputSpans(formulas);

/** Each input outside the samples of its name, as a sentence in the unit that was typed, with the slip that would explain it. */
export function unusualInputs(formula: AnyFormula, { input, typed }: FormulaInput): CaseIssue[] {
  const issues: CaseIssue[] = [];
  for (const [name, { kind }] of Object.entries(formula.inputs as Readonly<Record<string, { kind: InputKind }>>)) {
    const value = input[name];
    const span = spanOf(name, kind);
    if (typeof value !== 'number' || span === undefined) continue;
    const [least, most] = span;
    if (value >= least && value <= most) continue;
    const unit = typed[name]?.unit;
    const slips = isKind(kind) ? slipsInto(kind, value, span, unit) : [];
    const perhaps = slipsInWords(slips, 0).replaceAll(/\{(\d+)\}/gu, (_, index: string) =>
      written(kind, slips[Number(index)]?.value ?? value, unit),
    );
    const is = typed[name]?.text.trim() ?? written(kind, value, unit);
    const expected = `${written(kind, least, unit)} to ${written(kind, most, unit)}`;
    const message = `${name} is ${is}, outside the ${expected} over which this library is tested${perhaps}`;
    issues.push({ path: name, value: is, expected, message });
  }
  return issues;
}

/** To four digits in the unit that was typed. */
function written(kind: InputKind, value: number, unit: string | undefined): string {
  if (!isKind(kind)) return String(Number(value.toPrecision(4)));
  const symbol = unit ?? siSymbol(kind);
  const number = Number(fromSi(value, unitOf(kind, symbol) ?? [1, 1]).toPrecision(4));
  return symbol === '1' ? String(number) : `${number} ${symbol}`;
}
