import { step } from '../../formula/index.js';
import { gapAtEndOfLife } from '../../pipe/index.js';
import { type CorrosionRate, exactly, type Length, line, roundedUp } from '../../quantity/index.js';
import { wrapEnds } from '../../wrap/index.js';
import { type Workbook, warnOwner } from '../job/workbook.js';

/** A loss that does not act with the defect still takes the sound metal that the laminate holds on to, if it lies under it. */
export function checkNeighbours(work: Workbook, laidLength: Length): void {
  const { neighbours, axialLength: defectLength, growth } = work.case.defect;
  if (neighbours === undefined || neighbours === 'none') return;
  const rate = growth === 'none' ? (0 as CorrosionRate) : growth.length;
  const { life } = work.case.repair;
  const wrapped = { laidLength, defectLength };
  const purpose = 'wrap beside the defect as it was found';
  const { beyondDefect } = step(work.recorder, 'wrap/wrap-ends', wrapEnds, wrapped, purpose);
  for (const { gapAlong: gap } of neighbours) {
    const gapAlong = step(work.recorder, 'pipe/gap-at-end-of-life', gapAtEndOfLife, { gap, rate, life });
    if (gapAlong < beyondDefect) {
      work.notCovered.push({
        text: 'a neighbouring loss that does not act with the defect lies under the laid length, where the laminate has to lie on sound metal: state one defect that holds both, by its least wall',
        found: exactly('gap along the pipe at the end of life', 'length', gapAlong),
        limit: roundedUp('wrap beyond the defect', 'length', beyondDefect),
      });
    } else {
      warnOwner(
        work,
        line(
          'A neighbouring loss lies {0} along the pipe beside the defect, and the laminate does not reach it: it is not repaired by this one and needs a case of its own.',
          exactly('gap along the pipe', 'length', gap),
        ),
      );
    }
  }
}
