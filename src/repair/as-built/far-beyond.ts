import { exceedsTimes } from '../../numeric/index.js';
import { practice } from '../../rules/index.js';

/** Whether a reading is so much more than what the design has that it is a slip of a digit or a unit. */
export function isFarBeyond(value: number, planned: number): boolean {
  return exceedsTimes(value, practice.mostOverPlan.value, planned);
}
