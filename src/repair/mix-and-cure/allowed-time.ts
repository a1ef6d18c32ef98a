import { step } from '../../formula/index.js';
import type { Time } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { timeToLay } from '../../wrap/index.js';
import type { Workbook } from '../job/workbook.js';

/** What may be planned with of a working time: batches are sized by it, and what is laid is held to it. */
export function allowedTimeOf({ recorder }: Workbook, workingTime: Time, purpose: string): Time {
  const share = practice.shareOfWorkingTime.value;
  return step(recorder, 'wrap/time-to-lay', timeToLay, { workingTime, share }, purpose);
}
