import { step } from '../../formula/index.js';
import { practice } from '../../rules/index.js';
import { sheetBands, stagger } from '../../wrap/index.js';
import type { ExtentDesign, JointDesign, LaminateDesign, SheetDesign } from '../design/design.js';
import type { PassDesign, RollDesign } from '../design/design-work.js';
import type { Workbook } from '../job/workbook.js';
import type { Laid } from './laid.js';
import { layersOfSheet } from './layers.js';

/** One band wound in all its layers, or layer by layer in bands whose joints lie apart. */
export function layBands(work: Workbook, wrap: SheetDesign, laminate: LaminateDesign, extent: ExtentDesign): Laid {
  const { joints } = laminate;
  return joints === undefined ? layOneBand(work, wrap, extent) : layLayers(work, wrap, laminate, extent, joints);
}

function layOneBand(work: Workbook, wrap: SheetDesign, { totalLength, taper }: ExtentDesign): Laid {
  const { recorder } = work;
  const inward = step(recorder, 'wrap/stagger', stagger, { taper, layers: wrap.layers });
  const passes: PassDesign[] = [];
  const rolls: RollDesign[] = [];
  const { lengthOfEach, rows } = step(recorder, 'wrap/sheet-bands', sheetBands, {
    axialLength: totalLength,
    sheetWidth: work.case.wrap.width,
    sideLap: practice.sideLap.value,
    sheetLength: wrap.sheetLength,
  });
  for (const { band, from, to } of rows) {
    passes.push({ pass: band, direction: 'forward', from, to, tapeLength: lengthOfEach });
    rolls.push({ roll: band, length: lengthOfEach, endsInPass: band, endsAt: to });
  }
  return { length: totalLength, stagger: inward, passes, rolls };
}

function layLayers(
  work: Workbook,
  wrap: SheetDesign,
  laminate: LaminateDesign,
  extent: ExtentDesign,
  joints: JointDesign,
): Laid {
  const { taper, totalLength } = extent;
  const passes: PassDesign[] = [];
  const rolls: RollDesign[] = [];
  const inward = step(work.recorder, 'wrap/stagger', stagger, { taper, layers: wrap.layers });
  const { rows } = layersOfSheet(work, laminate, extent, wrap.finalLap, joints);
  for (const { piece, layer, from, to, begins, width, sheetLength } of rows) {
    passes.push({ pass: layer, direction: 'forward', from, to, tapeLength: sheetLength, begins, width });
    rolls.push({ roll: piece, length: sheetLength, endsInPass: layer, endsAt: to });
  }
  return { length: totalLength, stagger: inward, passes, rolls };
}
