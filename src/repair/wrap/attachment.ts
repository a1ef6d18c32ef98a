import { step } from '../../formula/index.js';
import { exactly, type Length, roundedUp } from '../../quantity/index.js';
import { wrapEnds } from '../../wrap/index.js';
import type { Workbook } from '../job/workbook.js';

/** Nothing stands on the pipe within the laid length: a bead of weld lifts the laminate, a branch or a support cuts it. */
export function checkAttachment(work: Workbook, laidLength: Length): void {
  const { nearestAttachment, axialLength: defectLength } = work.case.defect;
  if (nearestAttachment === undefined) return;
  const wrapped = { laidLength, defectLength };
  const purpose = 'free pipe needed beside the defect as it was found';
  const { beyondDefect } = step(work.recorder, 'wrap/wrap-ends', wrapEnds, wrapped, purpose);
  if (nearestAttachment >= beyondDefect) return;
  work.notCovered.push({
    text: 'a weld, branch, support or flange lies inside the laid length: this version designs for straight pipe without one',
    found: exactly('distance from the edge of the loss', 'length', nearestAttachment),
    limit: roundedUp('wrap beyond that edge', 'length', beyondDefect),
  });
}
