import { type CalculationError, isCalculationError } from '../../../src/formula/index.js';
import { type RemainingStrengthInput, remainingStrength } from '../../../src/pipe/index.js';

/** What a remaining strength is refused for; one that is given is an error of the test. */
export function refusalOf(input: RemainingStrengthInput): CalculationError {
  try {
    remainingStrength(input);
  } catch (error) {
    if (isCalculationError(error)) return error;
    throw error;
  }
  throw new Error('was not refused');
}
