import { checkHandCalculation, type Evaluated, evaluate, type HandCheck } from '../../../src/evaluate/index.js';
import { type AnyFormula, isCalculationError } from '../../../src/formula/index.js';
import { decodeFormulaInput } from '../../../src/json/formula-input.js';
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
    // `evaluate` takes a bare number for a quantity as one in SI: what is typed or linked goes through the stricter door first.
    decodeFormulaInput(formula, given);
    const evaluated = evaluate(formula.id, given, { units });
    return { sort: 'answered', evaluated, check: claimed.trim() === '' ? undefined : checked(formula, given, claimed) };
  } catch (error) {
    const refusals = refusalsOf(formula, error);
    if (refusals !== undefined) return { sort: 'refused', refusals };
    return { sort: 'fault', message: error instanceof Error ? error.message : String(error) };
  }
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
