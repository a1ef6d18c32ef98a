import { need, type Workbook } from '../job/workbook.js';

/** Losses near each other weaken the pipe as one: whether they do is told from their gaps. */
export function askForNeighbours(work: Workbook): void {
  if (work.stated.defect.neighbours !== undefined) return;
  need(
    work,
    'defect.neighbours',
    'losses near each other act as one larger defect, and one beside this one may lie under the overlap: the metal losses near it with their gaps along and round the pipe, or that there is none',
    'the inspector at the pipe',
  );
}
