import { step } from '../../formula/index.js';
import { thicknessSharingAxial, thicknessSharingHoop, thicknessSharingLive } from '../../laminate/index.js';
import type { Length } from '../../quantity/index.js';
import type { LaminateCriterion } from '../design/criteria.js';
import type { Candidate } from '../design/design.js';
import { pipeModulus } from '../found/pipe-modulus.js';
import { pressureAtWork } from '../found/pressure-at-work.js';
import { attempt, type Workbook } from '../job/workbook.js';
import type { ThicknessJob } from './loads.js';
import type { ThicknessRecord } from './method.js';
import { biaxialThickness } from './sharing-biaxial.js';
import { AXIAL, HOOP, HOOP_LIVE, sharingResistances } from './sharing-resistance.js';
import { allowableStressOf, pressureUnderLaminate, stressOfPipe } from './thinned-pipe.js';

/**
 * Pipe and laminate share the load, the pipe stays below its allowable stress and the laminate below its allowable strain
 * (ISO 24817, 7.5.4; PCC-2, Eq. 1 to 5). Pressure during the work always counts.
 */
export const substrateSharingLoad: ThicknessRecord = {
  needs: ({ pipe }) =>
    pipe.material.allowableStress === undefined
      ? { field: 'pipe.material.allowableStress', what: 'the allowable stress of the pipe' }
      : undefined,
  thickness: (work, job) => {
    const candidates = [hoopThickness(work, job)];
    const live = liveThickness(work, job);
    if (live !== undefined) candidates.push(live);
    candidates.push(axialThickness(work, job), biaxialThickness(work, job));
    return candidates;
  },
  resistance: sharingResistances,
};

function hoopThickness(work: Workbook, job: ThicknessJob): Candidate<Length, LaminateCriterion> {
  const pipeStress = stressOfPipe(work, allowableStressOf(work), job.hoop.strain, 'round the pipe');
  const value = step(work.recorder, 'laminate/thickness-sharing-hoop', thicknessSharingHoop, {
    outsideDiameter: job.hoop.diameter,
    allowableStress: pipeStress,
    substrateModulus: pipeModulus(work),
    pressure: job.hoop.pressure,
    hoopModulus: job.hoop.modulus,
    substratePressure: pressureUnderLaminate(work, job, pipeStress),
  });
  return { criterion: HOOP, value };
}

/**
 * The laminate is laid on a pipe that is strained already: it carries only what comes after. Its own strain is then less
 * than the line above allows for, so this one holds the stress of the pipe alone.
 */
function liveThickness(work: Workbook, job: ThicknessJob): Candidate<Length, LaminateCriterion> | undefined {
  const value = attempt(work, 'load sharing with pressure during application', () =>
    step(work.recorder, 'laminate/thickness-sharing-live', thicknessSharingLive, {
      outsideDiameter: job.hoop.diameter,
      allowableStress: allowableStressOf(work),
      substrateModulus: pipeModulus(work),
      pressure: job.hoop.pressure,
      livePressure: pressureAtWork(work.case.line),
      remainingWall: job.found.wallAtEndOfLife,
      hoopModulus: job.hoop.modulus,
    }),
  );
  return value === undefined ? undefined : { criterion: HOOP_LIVE, value };
}

/**
 * A defect assessment speaks of the hoop direction only: along the pipe the plain wall that is left counts, on the circle
 * of the pipe, and the laminate on that over the filler.
 */
function axialThickness(work: Workbook, job: ThicknessJob): Candidate<Length, LaminateCriterion> {
  const value = step(work.recorder, 'laminate/thickness-sharing-axial', thicknessSharingAxial, {
    outsideDiameter: job.axial.diameter,
    wrappedDiameter: job.hoop.diameter,
    allowableStress: stressOfPipe(work, allowableStressOf(work), job.axial.strain, 'along the pipe'),
    substrateModulus: pipeModulus(work),
    axialForce: job.axial.force,
    axialModulus: job.axial.modulus,
    remainingWall: job.found.wallAtEndOfLife,
  });
  return { criterion: AXIAL, value };
}
