import { leaksToday } from '../found/opening.js';
import { need, type Workbook } from '../job/workbook.js';

/** Nobody states a seal where nothing leaks: a leak that is called a thinned wall is designed and worked on as none. */
export function askForLeak(work: Workbook): void {
  const { defect, seal } = work.case;
  if (seal === undefined || leaksToday(defect)) return;
  need(
    work,
    'seal',
    `the case states how a leak is sealed, and "${defect.kind}" does not leak today: no seal is planned, held to its limits or counted under the laminate. Call what leaks by its defect.kind, with its opening; leave the seal out where nothing does`,
    'whoever looked at the pipe',
  );
}
