import { type Line, line } from '../../quantity/index.js';
import type { Reason } from '../design/design.js';

/** Why a line beside the chosen ones was not computed. */
export function whyNot([{ text, amounts = [] }]: readonly [Reason, ...Reason[]]): Line {
  return line(text, ...amounts);
}
