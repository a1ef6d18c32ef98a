import { attempt, heading, step } from '../../formula/index.js';
import { type ThickOverThin, thickOverThin } from '../../laminate/index.js';
import type { Length } from '../../quantity/index.js';
import { pipeModulus } from '../found/pipe-modulus.js';
import { pipePoissonRatio } from '../found/pipe-poisson-ratio.js';
import type { Workbook } from '../job/workbook.js';
import type { ThicknessJob } from './loads.js';

/**
 * What the thin walls of the shared load leave out, for whoever signs: nothing rests on it. Plies whose stated constants no
 * body of three dimensions can have get none.
 */
export function secondOpinion(work: Workbook, job: ThicknessJob, laminateThickness: Length): ThickOverThin | undefined {
  heading(work.recorder, 'Second opinion on the shared load: thick walls');
  const opinion = attempt(() =>
    step(work.recorder, 'laminate/thick-over-thin', thickOverThin, {
      pressure: job.hoop.pressure,
      outsideDiameter: job.found.outsideDiameter,
      remainingWall: job.found.wallAtEndOfLife,
      laminateThickness,
      substrateModulus: pipeModulus(work),
      substratePoisson: pipePoissonRatio(work),
      hoopModulus: job.hoop.modulus,
      axialModulus: job.axial.modulus,
      poissonRatio: work.case.laminate.poissonRatio,
    }),
  );
  return opinion.ok ? opinion.value : undefined;
}
