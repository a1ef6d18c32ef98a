import { need, type Workbook } from '../job/workbook.js';

/** How far the pipe is free of anything: whether that is far enough is seen when the wrap is planned. */
export function askForAttachment(work: Workbook): void {
  if (work.case.defect.nearestAttachment !== undefined) return;
  need(
    work,
    'defect.nearestAttachment',
    'a wrap that runs over a weld, a branch, a support or a flange is no wrap on straight pipe: how far the nearest is from the edge of the loss',
    'the inspector',
  );
}
