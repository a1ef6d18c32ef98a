import { need, type Workbook } from '../job/workbook.js';

/** How warm the sample of the transition was cured: whether the site cures as warm is seen with the limits. */
export function askForSample(work: Workbook): void {
  if (work.case.laminate.transitionCuredAt !== undefined) return;
  need(
    work,
    'laminate.transitionCuredAt',
    'a laminate that cures colder than the sample softens earlier than the sample did: the temperature at which the sample was cured',
    'the maker of the repair system: qualification report',
  );
}
