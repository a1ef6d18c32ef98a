import { step } from '../../formula/index.js';
import { practice } from '../../rules/index.js';
import { finalLap, rolls, sheetPlan } from '../../wrap/index.js';
import type { SheetStock } from '../case/case.js';
import type { ExtentDesign, LaminateDesign, SheetDesign } from '../design/design.js';
import { assume, type Workbook } from '../job/workbook.js';

/** Bands of sheet over the repair, and the rolls to order. */
export function planSheet(
  work: Workbook,
  sheet: SheetStock,
  { wrappedDiameter, plies }: LaminateDesign,
  { totalLength }: ExtentDesign,
): SheetDesign {
  const { recorder } = work;
  const { plyThickness } = work.case.laminate;
  const plan = step(recorder, 'wrap/sheet-plan', sheetPlan, {
    outsideDiameter: wrappedDiameter,
    plyThickness,
    plies,
    axialLength: totalLength,
    sheetWidth: sheet.width,
    sideLap: assume(work, undefined, practice.sideLap),
    finalLap: sheet.finalLap ?? step(recorder, 'wrap/final-lap', finalLap, { plyThickness }),
  });
  const order = step(recorder, 'wrap/rolls', rolls, {
    length: plan.totalLength,
    rollLength: sheet.rollLength,
    waste: assume(work, sheet.waste, practice.tapeWaste),
  });
  return {
    form: 'sheet',
    layers: plies,
    bands: plan.sheets,
    sheetLength: plan.totalLength,
    sheetArea: plan.sheetArea,
    rolls: order.rolls,
    leftOnLastRoll: order.leftOnLastRoll,
  };
}
