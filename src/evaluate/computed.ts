import { type AnyFormula, isCalculationError } from '../formula/index.js';
import type { FormulaInput } from '../json/formula-input.js';

/** The result of the formula; a refusal, which speaks SI, is told what was typed. */
export function computed(formula: AnyFormula, { input, typed }: FormulaInput): unknown {
  try {
    return formula.compute(input as never);
  } catch (error) {
    const text = isCalculationError(error) ? typed[error.parameter]?.text : undefined;
    if (text !== undefined && error instanceof Error) error.message += `; it was typed as ${JSON.stringify(text)}`;
    throw error;
  }
}
