import { heading, step } from '../../formula/index.js';
import { type Length, roundedUp } from '../../quantity/index.js';
import { wrapEnds } from '../../wrap/index.js';
import type { AsFound, ExtentDesign, LaminateDesign, SheetDesign, TapeDesign } from '../design/design.js';
import { type Open, open } from '../job/stage.js';
import type { Workbook } from '../job/workbook.js';
import { beyondThin } from '../laminate/validity.js';
import { checkAttachment } from './attachment.js';
import { checkNeighbours } from './neighbours.js';
import { planSheet } from './sheet.js';
import { planTape } from './tape.js';

/** How tape or sheet covers the repair, and how many rolls that takes. */
export function planWrap(
  work: Workbook,
  { found, laminate, extent }: { found: AsFound; laminate: LaminateDesign; extent: ExtentDesign },
): TapeDesign | SheetDesign | Open {
  // A laminate that was refused as too thick is not wrapped: its plan would only mislead.
  if (work.reasons.length > 0) return open;
  heading(work.recorder, 'Wrap');
  const { wrap } = work.case;
  const plan = wrap.form === 'tape' ? planTape(work, wrap, laminate, extent) : planSheet(work, wrap, laminate, extent);
  if (extent.meanThickness > laminate.laidThickness) checkLaps(work, found, extent);
  const laid = Math.max(laidLength(plan, extent), extent.totalLength) as Length;
  checkRoom(work, extent, laid);
  checkAttachment(work, laid);
  checkNeighbours(work, laid);
  return plan;
}

/** Length of pipe that the wrap lies on, end bands included. */
export function laidLength(wrap: TapeDesign | SheetDesign, { totalLength }: ExtentDesign): Length {
  return wrap.form === 'tape' ? wrap.overallLength : totalLength;
}

/** With the laps of its turns or bands a wrap may be no thin laminate any more. */
function checkLaps(work: Workbook, { outsideDiameter }: AsFound, { meanThickness }: ExtentDesign): void {
  const beyond = beyondThin(work, outsideDiameter, meanThickness);
  if (beyond === undefined) return;
  work.reasons.push({
    text: 'with the laps of its turns or bands the wrap lies thicker than the criteria ask for, too thick for the equations of a thin laminate: tape that laps by a whole part of its width, as a half, or by less, or a wider sheet lies thinner',
    ...beyond,
  });
}

/** Is there room beside the defect for all that is laid: overlap, taper and the end bands of the tape? */
function checkRoom(work: Workbook, { defectLength }: ExtentDesign, laid: Length): void {
  const { availableOverlap } = work.case.repair;
  if (availableOverlap === undefined) return;
  const { beyondDefect } = step(
    work.recorder,
    'wrap/wrap-ends',
    wrapEnds,
    { laidLength: laid, defectLength },
    'sound pipe needed',
  );
  if (availableOverlap >= beyondDefect) return;
  work.reasons.push({
    text: 'there is not enough sound pipe beside the defect for the wrap with its ends',
    found: { name: 'sound pipe available', kind: 'length', value: availableOverlap },
    limit: roundedUp('sound pipe needed', 'length', beyondDefect),
  });
}
