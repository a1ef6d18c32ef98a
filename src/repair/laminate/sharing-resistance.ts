import { step } from '../../formula/index.js';
import {
  forceSharingAxial,
  pressureOfEndForce,
  pressureSharingHoop,
  pressureSharingLive,
} from '../../laminate/index.js';
import type { GaugePressure, Length } from '../../quantity/index.js';
import type { LaminateCriterion } from '../design/criteria.js';
import type { Candidate } from '../design/design.js';
import { pressureLeft } from '../found/external-force.js';
import { pipeModulus } from '../found/pipe-modulus.js';
import { pressureAtWork } from '../found/pressure-at-work.js';
import type { Workbook } from '../job/workbook.js';
import type { ThicknessJob } from './loads.js';
import { biaxialResistance } from './sharing-biaxial.js';
import { allowableStressOf, pressureUnderLaminate, stressOfPipe } from './thinned-pipe.js';

export const HOOP: LaminateCriterion = 'hoop stress of the pipe, load shared';
export const HOOP_LIVE: LaminateCriterion = 'hoop stress of the pipe, with pressure during application';
export const AXIAL: LaminateCriterion = 'axial stress of the pipe, load shared';

/** Pressures at which the pipe under a laid thickness reaches its allowable stress, or the laminate its allowable strain. */
export function sharingResistances(
  work: Workbook,
  job: ThicknessJob,
  laminateThickness: Length,
): Candidate<GaugePressure, LaminateCriterion>[] {
  const { recorder } = work;
  const [allowableStress, substrateModulus] = [allowableStressOf(work), pipeModulus(work)];
  const pipeStress = stressOfPipe(work, allowableStress, job.hoop.strain, 'round the pipe');
  const hoop = step(recorder, 'laminate/pressure-sharing-hoop', pressureSharingHoop, {
    laminateThickness,
    allowableStress: pipeStress,
    substrateModulus,
    outsideDiameter: job.hoop.diameter,
    hoopModulus: job.hoop.modulus,
    substratePressure: pressureUnderLaminate(work, job, pipeStress),
  });
  const live = step(recorder, 'laminate/pressure-sharing-live', pressureSharingLive, {
    laminateThickness,
    allowableStress,
    substrateModulus,
    outsideDiameter: job.hoop.diameter,
    hoopModulus: job.hoop.modulus,
    remainingWall: job.found.wallAtEndOfLife,
    livePressure: pressureAtWork(work.case.line),
  });
  return [
    { criterion: HOOP, value: pressureLeft(work, job.axial.diameter, hoop) },
    { criterion: HOOP_LIVE, value: pressureLeft(work, job.axial.diameter, live) },
    { criterion: AXIAL, value: axialResistance(work, job, laminateThickness) },
    biaxialResistance(work, job, laminateThickness),
  ];
}

function axialResistance(work: Workbook, job: ThicknessJob, laminateThickness: Length): GaugePressure {
  const { diameter: outsideDiameter, modulus: axialModulus, forceWithoutPressure } = job.axial;
  const held = step(work.recorder, 'laminate/force-sharing-axial', forceSharingAxial, {
    laminateThickness,
    allowableStress: stressOfPipe(work, allowableStressOf(work), job.axial.strain, 'along the pipe'),
    substrateModulus: pipeModulus(work),
    outsideDiameter,
    wrappedDiameter: job.hoop.diameter,
    axialModulus,
    remainingWall: job.found.wallAtEndOfLife,
  });
  const ends = { axialForce: held, outsideDiameter, externalForce: forceWithoutPressure };
  return step(work.recorder, 'laminate/pressure-of-end-force', pressureOfEndForce, ends);
}
