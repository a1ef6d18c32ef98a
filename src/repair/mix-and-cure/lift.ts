import { step } from '../../formula/index.js';
import { exactly, type Length, roundedDown } from '../../quantity/index.js';
import { pourDepth } from '../../resin/index.js';
import type { Filler } from '../case/case.js';
import type { Workbook } from '../job/workbook.js';

/** A pour thicker than its maker allows heats itself; one wait is planned, so one lift has to do. */
export function checkLift(work: Workbook, { greatestLift, thicknessOverDefect }: Filler, depth: Length): void {
  if (greatestLift === undefined) return;
  const pour = step(work.recorder, 'resin/pour-depth', pourDepth, { thicknessOverDefect, depth });
  if (pour <= greatestLift) return;
  work.notCovered.push({
    text: 'the filler is deeper than may be placed at once, and this version plans one lift with one wait: lay less over the defect, or take a filler with a greater lift',
    found: exactly('filler over the bottom of the defect', 'length', pour),
    limit: roundedDown('greatest lift of the filler', 'length', greatestLift),
  });
}
