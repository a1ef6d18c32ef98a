import { step } from '../../formula/index.js';
import { outsideRadius } from '../../pipe/index.js';
import { exactly, type Length, type Ratio, roundedDown, roundedUp } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { axialTapeWidth, fullCountLength, layerDiameter, minimumLayers, rolls, tapePlan } from '../../wrap/index.js';
import type { TapeStock } from '../case/case.js';
import type { ExtentDesign, LaminateDesign, TapeDesign } from '../design/design.js';
import { assume, type Workbook } from '../job/workbook.js';
import { overlapAlongInside } from '../laminate/inside-of-bend.js';
import { checkTapeLap } from './tape-lap.js';
import { warnOfTape } from './tape-warnings.js';

/** Passes of tape over the repair, and the rolls to order. */
export function planTape(
  work: Workbook,
  tape: TapeStock,
  laminate: LaminateDesign,
  { totalLength, taper }: ExtentDesign,
): TapeDesign {
  const { recorder } = work;
  const { plyThickness } = work.case.laminate;
  const { wrappedDiameter, plies } = laminate;
  const layersPerPass = step(recorder, 'wrap/minimum-layers', minimumLayers, { overlap: tape.overlap });
  checkTapeLap(work, tape, layersPerPass);
  const firstLayer = step(recorder, 'wrap/layer-diameter', layerDiameter, {
    outsideDiameter: wrappedDiameter,
    layerThickness: plyThickness,
    layer: 1,
  });
  const endBand = step(recorder, 'wrap/axial-tape-width', axialTapeWidth, {
    tapeWidth: tape.width,
    overlap: tape.overlap,
    meanDiameter: firstLayer,
  });
  const fullCount = step(recorder, 'wrap/full-count-length', fullCountLength, {
    totalLength,
    taper,
    axialTapeWidth: endBand,
  });
  const plan = step(recorder, 'wrap/tape-plan', tapePlan, {
    outsideDiameter: wrappedDiameter,
    tapeWidth: tape.width,
    overlap: tape.overlap,
    layerThickness: plyThickness,
    requiredLayers: plies,
    fullCountLength: fullCount,
  });
  const order = step(recorder, 'wrap/rolls', rolls, {
    length: plan.tapeLength,
    rollLength: tape.rollLength,
    waste: assume(work, tape.waste, practice.tapeWaste),
  });
  warnOfTape(work, tape, laminate, layersPerPass);
  const insideOverlap = overlapInside(work, tape, wrappedDiameter);
  const design: { -readonly [K in keyof TapeDesign]: TapeDesign[K] } = {
    form: 'tape',
    layersPerPass,
    passes: plan.passes,
    layers: plan.layers,
    fullCountLength: fullCount,
    overallLength: plan.overallLength,
    tapeLength: plan.tapeLength,
    rolls: order.rolls,
    leftOnLastRoll: order.leftOnLastRoll,
  };
  if (insideOverlap !== undefined) design.insideOverlap = insideOverlap;
  return design;
}

/**
 * How tape lies on a bend: the turns spread along the outside, and there they have to keep the stated overlap, or they gape;
 * along the inside they close up and lie thicker. Turns, tape and lengths are those along the outside.
 */
function overlapInside(work: Workbook, { overlap }: TapeStock, outsideDiameter: Length): Ratio | undefined {
  const { fitting } = work.case;
  if (fitting === 'none' || fitting.bendRadius === undefined) return undefined;
  const { bendRadius } = fitting;
  const radius = step(work.recorder, 'pipe/outside-radius', outsideRadius, { outsideDiameter }, 'under the laminate');
  if (bendRadius <= radius) {
    work.reasons.push({
      text: 'the bend is tighter than the laminate on it is wide, so that its turns would fold over each other along the inside: cut out the bend',
      found: exactly('bend radius', 'length', bendRadius),
      limit: roundedUp('radius under the laminate', 'length', radius),
    });
    return undefined;
  }
  const onInside = overlapAlongInside(work, overlap, { bendRadius, outsideDiameter });
  if (onInside > practice.mostInsideOverlap.value) {
    work.reasons.push({
      text: 'the bend is so tight that the turns pile up along its inside: less overlap, or cut out the bend',
      found: exactly('overlap along the inside', 'ratio', onInside),
      limit: roundedDown('largest overlap along the inside', 'ratio', practice.mostInsideOverlap.value),
    });
  }
  return onInside;
}
