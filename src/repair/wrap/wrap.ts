import { heading, step } from '../../formula/index.js';
import { laidThickness } from '../../laminate/index.js';
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
  if (plan.layers > laminate.plies) checkPasses(work, found, plan.layers);
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

/** Passes that lay more layers than the criteria ask for make a laminate that may be no thin one any more. */
function checkPasses(work: Workbook, { outsideDiameter }: AsFound, plies: number): void {
  const { plyThickness } = work.case.laminate;
  const thickness = step(work.recorder, 'laminate/laid-thickness', laidThickness, { plies, plyThickness }, 'as laid');
  const beyond = beyondThin(work, outsideDiameter, thickness);
  if (beyond === undefined) return;
  work.reasons.push({
    text: 'the passes of the tape lay more layers than the criteria ask for, too many for the equations of a thin laminate: a smaller overlap lays fewer at a time',
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
