import { decide, step } from '../../formula/index.js';
import { overlapFromAdhesive } from '../../laminate/index.js';
import { exactly, type Length } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { finalLap, rolls, sheetPlan } from '../../wrap/index.js';
import type { SheetStock } from '../case/case.js';
import type { ExtentDesign, JointDesign, LaminateDesign, SheetDesign } from '../design/design.js';
import { assume, use, type Workbook } from '../job/workbook.js';
import { layersOfSheet } from './layers.js';

/** Bands of sheet over the repair, and the rolls to order. */
export function planSheet(
  work: Workbook,
  sheet: SheetStock,
  laminate: LaminateDesign,
  extent: ExtentDesign,
): SheetDesign {
  const lap = lapOfTurn(work, sheet, laminate);
  const { joints } = laminate;
  const { sheets, length, area } =
    joints === undefined
      ? inOneBand(work, sheet, laminate, extent, lap)
      : inLayers(work, sheet, laminate, extent, lap, joints);
  const order = step(work.recorder, 'wrap/rolls', rolls, {
    length,
    rollLength: sheet.rollLength,
    waste: assume(work, sheet.waste, practice.tapeWaste),
  });
  return {
    form: 'sheet',
    layers: laminate.plies,
    bands: sheets,
    finalLap: lap,
    sheetLength: length,
    sheetArea: area,
    rolls: order.rolls,
    leftOnLastRoll: order.leftOnLastRoll,
  };
}

type Covered = { readonly sheets: number; readonly length: Length; readonly area: SheetDesign['sheetArea'] };

/** One sheet over the whole length, wound in all plies. */
function inOneBand(
  work: Workbook,
  { width: sheetWidth }: SheetStock,
  { wrappedDiameter, plies }: LaminateDesign,
  { totalLength }: ExtentDesign,
  lap: Length,
): Covered {
  const {
    sheets,
    totalLength: length,
    sheetArea: area,
  } = step(work.recorder, 'wrap/sheet-plan', sheetPlan, {
    outsideDiameter: wrappedDiameter,
    plyThickness: work.case.laminate.plyThickness,
    plies,
    axialLength: totalLength,
    sheetWidth,
    sideLap: practice.sideLap.value,
    finalLap: lap,
  });
  return { sheets, length, area };
}

/** Layer by layer in bands of one turn, so that no two layers next to each other end at one place. */
function inLayers(
  work: Workbook,
  { width }: SheetStock,
  laminate: LaminateDesign,
  extent: ExtentDesign,
  lap: Length,
  joints: JointDesign,
): Covered {
  assume(work, undefined, practice.sideLap);
  const { bands: sheets, totalLength, sheetArea: area, rows } = layersOfSheet(work, laminate, extent, lap, joints);
  if (rows.length > practice.mostRollsLaidOut.value)
    work.notCovered.push({
      text: 'the sheet is too narrow for this length: nobody follows a list of so many bands; take a wider one',
      found: exactly('width of the sheet', 'length', width),
      limit: exactly(practice.mostRollsLaidOut.name, 'count', practice.mostRollsLaidOut.value),
    });
  return { sheets, length: totalLength, area };
}

/** A turn laps on itself as the maker says, or the trade, and never less than the bond takes for the force of a ply. */
function lapOfTurn(work: Workbook, sheet: SheetStock, { hoopStrain }: LaminateDesign): Length {
  const { recorder, rules } = work;
  const { plyThickness, hoopModulus, lapShearStrength } = work.case.laminate;
  const asked = sheet.finalLap ?? step(recorder, 'wrap/final-lap', finalLap, { plyThickness });
  if (lapShearStrength === undefined) return asked;
  const ofBond = step(
    recorder,
    'laminate/overlap-from-adhesive',
    overlapFromAdhesive,
    {
      axialModulus: hoopModulus,
      axialStrain: hoopStrain,
      laminateThickness: plyThickness,
      lapShearStrength,
      factor: use(work, 'factor on the overlap of the bond', rules.overlap.adhesiveFactor),
    },
    'lap of a turn round the pipe, which then carries as the ply does',
  );
  if (ofBond > asked) decide(recorder, 'lap of a turn by the bond', 'the stated one does not carry the force of a ply');
  return Math.max(asked, ofBond) as Length;
}
