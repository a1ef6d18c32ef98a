import { type Line, line } from '../../quantity/index.js';
import type { Reason } from '../design/design.js';

/** Why a line beside the chosen ones was not computed. */
export function whyNot([refusal]: readonly Reason[]): Line {
  return refusal === undefined ? { text: 'another case' } : line(refusal.text, ...(refusal.amounts ?? []));
}
