import { step } from '../../formula/index.js';
import { reaches } from '../../numeric/index.js';
import { exactly, roundedUp } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { sideLap } from '../../wrap/index.js';
import type { TapeStock } from '../case/case.js';
import type { Workbook } from '../job/workbook.js';

/**
 * Where one layer alone lies in a pass, its turns have to lap: at a bare edge nothing carries along the pipe, and what leaks
 * finds its way out. Two layers everywhere have one that goes through at each edge.
 */
export function checkTapeLap(work: Workbook, { overlap, width }: TapeStock, layersPerPass: number): void {
  if (layersPerPass > 1) return;
  const lap = step(work.recorder, 'wrap/side-lap', sideLap, { overlap, tapeWidth: width });
  const least = practice.sideLap.value;
  if (reaches(lap, least)) return;
  work.reasons.push({
    text: 'the turns of the tape hardly lap, and every pass is open at their edges: nothing carries along the pipe there, and a leak finds its way out; lay it with more overlap',
    found: exactly('side lap of the turns', 'length', lap),
    limit: roundedUp('least side lap', 'length', least),
  });
}
