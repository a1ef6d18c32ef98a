import { need, type Workbook } from '../job/workbook.js';

/** What the weakest part within the length under test may carry: the test pressure is held to it. */
export function askForRating(work: Workbook): void {
  const test = work.case.acceptance?.pressureTest;
  if (test === undefined || test === 'none' || test.lowestRating !== undefined) return;
  need(
    work,
    'acceptance.pressureTest.lowestRating',
    'the test loads all that lies within the length under test: the lowest rating of a flange, valve or hose there',
    'the owner of the line: piping class and isometric',
  );
}
