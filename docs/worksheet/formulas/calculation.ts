import { checkHandCalculation, type Evaluated, evaluate, type HandCheck } from '../../../src/evaluate/index.js';
import { type AnyFormula, isCalculationError } from '../../../src/formula/index.js';
import { isCaseError } from '../../../src/json/index.js';
import type { UnitPreferences } from '../../../src/quantity/index.js';
import { type Refusal, refusalOf } from '../case/refusal.js';
import { type Given, inputLabel } from './inputs.js';

/** What became of the numbers entered for a formula. */
export type Calculation =
  | { readonly sort: 'refused'; readonly refusals: readonly Refusal[] }
  | { readonly sort: 'fault'; readonly message: string }
  | { readonly sort: 'answered'; readonly evaluated: Evaluated; readonly check: HandCheck | Refusal | undefined };

/** The answer of a formula, and what it says of a result worked out by hand where one was entered. */
export function calculationOf(formula: AnyFormula, given: Given, claimed: string, units: UnitPreferences): Calculation {
  try {
    const texts = withUnits(formula, given);
    const evaluated = evaluate(formula.id, texts, { units });
    return { sort: 'answered', evaluated, check: claimed.trim() === '' ? undefined : checked(formula, texts, claimed) };
  } catch (error) {
    const refusals = refusalsOf(formula, error);
    if (refusals !== undefined) return { sort: 'refused', refusals };
    return { sort: 'fault', message: error instanceof Error ? error.message : String(error) };
  }
}

/** A bare number for a quantity would count as one in SI: here it is a text without a unit, and is refused. */
function withUnits(formula: AnyFormula, given: Given): Given {
  const inputs = formula.inputs as Readonly<Record<string, { readonly kind: string }>>;
  const bare = (kind: string): boolean => kind === 'number' || kind === 'count';
  return Object.fromEntries(
    Object.entries(given)
      .filter(([, value]) => value !== undefined)
      .map(([name, value]) => {
        const kind = Object.hasOwn(inputs, name) ? inputs[name]?.kind : undefined;
        return [name, typeof value === 'number' && kind !== undefined && !bare(kind) ? String(value) : value];
      }),
  );
}

function checked(formula: AnyFormula, given: Given, claimed: string): HandCheck | Refusal {
  try {
    return checkHandCalculation(formula.id, given, claimed);
  } catch (error) {
    const [refusal] = refusalsOf(formula, error) ?? [];
    if (refusal === undefined) throw error;
    return refusal;
  }
}

function refusalsOf(formula: AnyFormula, error: unknown): Refusal[] | undefined {
  const label = (path: string): string => inputLabel(formula, path.replace(/[.[].*$/u, '')) ?? path;
  if (isCaseError(error)) return error.issues.map((issue) => refusalOf(issue, label(issue.path)));
  if (!isCalculationError(error)) return undefined;
  const { parameter: path, message } = error;
  return [{ path, label: label(path), text: message, isUnfilled: false }];
}
