import { need, type Workbook } from '../job/workbook.js';

/** A push along a pipe that hangs free buckles it, one that is dug free for the work too: the defect does not tell how far. */
export function askForSpan(work: Workbook): void {
  const { loads } = work.case;
  if (loads.freeSpan !== undefined || work.along.push === 0) return;
  need(
    work,
    'loads.freeSpan',
    'the case states a push along the pipe, and a pushed pipe may buckle between its supports: the longest span without support, or dug free for the work',
    'the stress engineer of the line',
  );
}
