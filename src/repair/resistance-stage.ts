import { heading } from '../formula/index.js';
import type { GaugePressure, Length } from '../quantity/index.js';
import type { ThicknessMethod } from './case.js';
import type { Candidate } from './design.js';
import { resistanceIgnoringPipe } from './thickness-ignored.js';
import type { ThicknessJob } from './thickness-job.js';
import { resistanceByLongTermStrength } from './thickness-long-term.js';
import { resistanceSharingLoad } from './thickness-sharing.js';
import { resistanceOfYieldedPipe } from './thickness-yielded.js';
import type { Workbook } from './workbook.js';

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
