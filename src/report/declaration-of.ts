import type { AnyFormula } from '../formula/index.js';
import type { RecordedStep } from '../formula/recorder.js';
import { formulaById } from '../registry/index.js';

/**
 * The declaration behind a recorded call.
 *
 * @throws Error when the function is not in the registry: a step that cannot be shown must not be left out
 */
export function declarationOf(step: RecordedStep): AnyFormula {
  const formula = formulaById(step.formula);
  if (formula === undefined) throw new Error(`the recorded formula ${step.formula} is not in the registry`);
  return formula;
}
