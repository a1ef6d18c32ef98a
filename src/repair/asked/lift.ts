import { need, type Workbook } from '../job/workbook.js';

/** How thick filler may lie at once: whether it lies thicker is seen when it is mixed. */
export function askForLift(work: Workbook): void {
  const { filler } = work.case;
  if (filler === 'none' || filler.greatestLift !== undefined) return;
  need(
    work,
    'filler.greatestLift',
    'a thick pour of filler heats itself until it cracks or burns: the greatest thickness that may be placed at once',
    'the maker of the filler',
  );
}
