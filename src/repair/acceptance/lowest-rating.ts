import { exactly, type GaugePressure, roundedDown } from '../../quantity/index.js';
import type { PressureTest } from '../case/case.js';
import type { Workbook } from '../job/workbook.js';

/** The test loads all that is closed off with the repair: what is weakest there says how far it may go. */
export function checkRating(work: Workbook, { lowestRating }: PressureTest, testPressure: GaugePressure): void {
  if (lowestRating === undefined || testPressure <= lowestRating) return;
  work.reasons.push({
    text: 'the pressure test would overload a flange, valve or hose within the length under test: close it off from the test, or agree on no test with the owner',
    found: exactly('test pressure', 'gauge pressure', testPressure),
    limit: roundedDown('lowest rating within the length under test', 'gauge pressure', lowestRating),
  });
}
