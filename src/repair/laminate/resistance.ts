import { heading } from '../../formula/index.js';
import type { GaugePressure, Length } from '../../quantity/index.js';
import type { ThicknessMethod } from '../case/case.js';
import type { Candidate } from '../design/design.js';
import type { Workbook } from '../job/workbook.js';
import { resistanceIgnoringPipe } from './ignored.js';
import type { ThicknessJob } from './loads.js';
import { resistanceByLongTermStrength } from './long-term.js';
import { resistanceSharingLoad } from './sharing.js';
import { resistanceOfYieldedPipe } from './yielded.js';

/** Pressures that the laid thickness resists, line by line of the method that was chosen. */
export function resistanceByMethod(
  work: Workbook,
  method: ThicknessMethod,
  job: ThicknessJob,
  laid: Length,
): Candidate<GaugePressure>[] {
  heading(work.recorder, 'Pressure that the laid thickness resists');
  switch (method) {
    case 'substrate ignored':
      return resistanceIgnoringPipe(work, job, laid);
    case 'substrate sharing load':
      return resistanceSharingLoad(work, job, laid);
    case 'substrate yielded':
      return resistanceOfYieldedPipe(work, job, laid);
    case 'long-term strength':
      return resistanceByLongTermStrength(work, job, laid);
  }
}
