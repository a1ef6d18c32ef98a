import { step } from '../../formula/index.js';
import { practice } from '../../rules/index.js';
import { sheetBands, stagger } from '../../wrap/index.js';
import type { ExtentDesign, SheetDesign } from '../design/design.js';
import type { PassDesign, RollDesign } from '../design/design-work.js';
import type { Workbook } from '../job/workbook.js';
import type { Laid } from './laid.js';

/** Bands of sheet side by side, each wound to its full count of layers before the next. */
export function layBands(work: Workbook, wrap: SheetDesign, { totalLength, taper }: ExtentDesign): Laid {
  const { recorder } = work;
  const inward = step(recorder, 'wrap/stagger', stagger, { taper, layers: wrap.layers });
  const passes: PassDesign[] = [];
  const rolls: RollDesign[] = [];
  if (wrap.bands <= practice.mostRollsLaidOut.value) {
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
  }
  return { length: totalLength, stagger: inward, passes, rolls };
}
