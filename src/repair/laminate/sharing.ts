import { step } from '../../formula/index.js';
import { thicknessSharingAxial, thicknessSharingHoop, thicknessSharingLive } from '../../laminate/index.js';
import { strainAtStress } from '../../pipe/index.js';
import { exactly, type Length, roundedDown } from '../../quantity/index.js';
import type { LaminateCriterion } from '../design/criteria.js';
import type { Candidate } from '../design/design.js';
import { pipeModulus } from '../found/pipe-modulus.js';
import { pressureAtWork } from '../found/pressure-at-work.js';
import { attempt, type Workbook } from '../job/workbook.js';
import type { ThicknessJob } from './loads.js';
import type { ThicknessRecord } from './method.js';
import { AXIAL, HOOP, HOOP_LIVE, sharingResistances } from './sharing-resistance.js';
import { allowableStressOf, pressureOfPlainWall, pressureOfThinnedPipe } from './thinned-pipe.js';

/**
 * Pipe and laminate share the load, and the pipe stays below its allowable stress (ISO 24817, 7.5.4; PCC-2, Eq. 1 to 5).
 * Pressure during the work always counts.
 */
export const substrateSharingLoad: ThicknessRecord = {
  countsOnMetal: true,
  needs: ({ pipe }) =>
    pipe.material.allowableStress === undefined
      ? { field: 'pipe.material.allowableStress', what: 'the allowable stress of the pipe' }
      : undefined,
  thickness: (work, job) => {
    checkSharedStrain(work, job);
    const candidates = [hoopThickness(work, job)];
    const live = liveThickness(work, job);
    if (live !== undefined) candidates.push(live);
    candidates.push(axialThickness(work, job));
    return candidates;
  },
  resistance: sharingResistances,
};

/** The laminate takes the strain of the pipe at its allowable stress: that has to be allowed to the laminate too. */
function checkSharedStrain(work: Workbook, job: ThicknessJob): void {
  const pipe = { stress: allowableStressOf(work), modulus: pipeModulus(work) };
  const strain = step(work.recorder, 'pipe/strain-at-stress', strainAtStress, pipe, 'pipe at its allowable stress');
  if (strain <= job.hoop.strain) return;
  work.reasons.push({
    text: 'sharing load with the pipe at its allowable stress would strain the laminate more than it may be',
    found: exactly('strain of the pipe at its allowable stress', 'strain', strain),
    limit: roundedDown('allowable hoop strain of the laminate', 'strain', job.hoop.strain),
  });
}

function hoopThickness(work: Workbook, job: ThicknessJob): Candidate<Length, LaminateCriterion> {
  const value = step(work.recorder, 'laminate/thickness-sharing-hoop', thicknessSharingHoop, {
    outsideDiameter: job.hoop.diameter,
    allowableStress: allowableStressOf(work),
    substrateModulus: pipeModulus(work),
    pressure: work.case.service.designPressure,
    hoopModulus: job.hoop.modulus,
    substratePressure: pressureOfThinnedPipe(work, job),
  });
  return { criterion: HOOP, value };
}

/** The laminate is laid on a pipe that is strained already: it carries only what comes after. */
function liveThickness(work: Workbook, job: ThicknessJob): Candidate<Length, LaminateCriterion> | undefined {
  const value = attempt(work, 'load sharing with pressure during application', () =>
    step(work.recorder, 'laminate/thickness-sharing-live', thicknessSharingLive, {
      outsideDiameter: job.hoop.diameter,
      allowableStress: allowableStressOf(work),
      substrateModulus: pipeModulus(work),
      pressure: work.case.service.designPressure,
      livePressure: pressureAtWork(work.case.line),
      remainingWall: job.found.wallAtEndOfLife,
      hoopModulus: job.hoop.modulus,
    }),
  );
  return value === undefined ? undefined : { criterion: HOOP_LIVE, value };
}

/**
 * A defect assessment speaks of the hoop direction only: along the pipe the plain wall that is left counts. The force and
 * the wall are of the pipe's diameter, the equation is on the one over the filler: see `ThicknessJob`.
 */
function axialThickness(work: Workbook, job: ThicknessJob): Candidate<Length, LaminateCriterion> {
  const value = step(work.recorder, 'laminate/thickness-sharing-axial', thicknessSharingAxial, {
    outsideDiameter: job.hoop.diameter,
    allowableStress: allowableStressOf(work),
    substrateModulus: pipeModulus(work),
    axialForce: job.axial.force,
    axialModulus: job.axial.modulus,
    substratePressure: pressureOfPlainWall(work, job),
  });
  return { criterion: AXIAL, value };
}
