import { step } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { type SheetLayers, sheetLayers, stagger } from '../../wrap/index.js';
import type { ExtentDesign, JointDesign, LaminateDesign } from '../design/design.js';
import type { Workbook } from '../job/workbook.js';

/** Each band of each layer of a sheet with joints. */
export function layersOfSheet(
  work: Workbook,
  { wrappedDiameter, plies }: LaminateDesign,
  { totalLength, taper }: ExtentDesign,
  finalLap: Length,
  { places }: JointDesign,
): SheetLayers {
  const { recorder, case: repairCase } = work;
  const inward = step(recorder, 'wrap/stagger', stagger, { taper, layers: plies });
  return step(recorder, 'wrap/sheet-layers', sheetLayers, {
    outsideDiameter: wrappedDiameter,
    plyThickness: repairCase.laminate.plyThickness,
    plies,
    axialLength: totalLength,
    sheetWidth: repairCase.wrap.width,
    sideLap: practice.sideLap.value,
    finalLap,
    places,
    stagger: inward,
  });
}
