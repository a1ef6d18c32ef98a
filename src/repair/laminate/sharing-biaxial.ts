import { step } from '../../formula/index.js';
import {
  pressureSharingBiaxial,
  stressLeftAtWork,
  thicknessSharingBiaxial,
  wallOfSubstratePressure,
} from '../../laminate/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';
import type { LaminateCriterion } from '../design/criteria.js';
import type { Candidate } from '../design/design.js';
import { forceOnSide, pressureLeft } from '../found/external-force.js';
import { pipeModulus } from '../found/pipe-modulus.js';
import { pipePoissonRatio } from '../found/pipe-poisson-ratio.js';
import { pressureAtWork } from '../found/pressure-at-work.js';
import type { Workbook } from '../job/workbook.js';
import { pushAlong } from './ignored.js';
import type { ThicknessJob } from './loads.js';
import { allowableStressOf, pressureOfThinnedPipe } from './thinned-pipe.js';

const BIAXIAL: LaminateCriterion = 'both stresses of the pipe and both strains, closed ends, load shared';

/**
 * The form of one direction takes the hoop stress of a pipe with closed ends past its allowable: beside it stands the
 * thickness that keeps it, and the thicker governs.
 */
export function biaxialThickness(work: Workbook, job: ThicknessJob): Candidate<Length, LaminateCriterion> {
  const substrateWall = wallThatStandsForThePipe(work, job);
  const value = step(work.recorder, 'laminate/thickness-sharing-biaxial', thicknessSharingBiaxial, {
    pressure: job.hoop.pressure,
    axialForce: job.axial.forceWithRound,
    leastAxialForce: pushAlong(work, job, 'left out'),
    outsideDiameter: job.axial.diameter,
    wrappedDiameter: job.hoop.diameter,
    allowableStress: stressToShare(work, job, substrateWall),
    substrateWall,
    substrateModulus: pipeModulus(work),
    substratePoisson: pipePoissonRatio(work),
    hoopModulus: job.hoop.modulus,
    axialModulus: job.axial.modulus,
    poissonRatio: work.case.laminate.poissonRatio,
    hoopStrain: job.hoop.strain,
    axialStrain: job.axial.strain,
  });
  return { criterion: BIAXIAL, value };
}

export function biaxialResistance(
  work: Workbook,
  job: ThicknessJob,
  laminateThickness: Length,
): Candidate<GaugePressure, LaminateCriterion> {
  const substrateWall = wallThatStandsForThePipe(work, job);
  const value = step(work.recorder, 'laminate/pressure-sharing-biaxial', pressureSharingBiaxial, {
    laminateThickness,
    externalForce: job.axial.forceWithoutPressure,
    leastAxialForce: pushAlong(work, job, 'left out'),
    outsideDiameter: job.axial.diameter,
    wrappedDiameter: job.hoop.diameter,
    allowableStress: stressToShare(work, job, substrateWall),
    substrateWall,
    substrateModulus: pipeModulus(work),
    substratePoisson: pipePoissonRatio(work),
    hoopModulus: job.hoop.modulus,
    axialModulus: job.axial.modulus,
    poissonRatio: work.case.laminate.poissonRatio,
    hoopStrain: job.hoop.strain,
    axialStrain: job.axial.strain,
  });
  return { criterion: BIAXIAL, value: pressureLeft(work, job.axial.diameter, value) };
}

function wallThatStandsForThePipe(work: Workbook, job: ThicknessJob): Length {
  return step(work.recorder, 'laminate/wall-of-substrate-pressure', wallOfSubstratePressure, {
    substratePressure: pressureOfThinnedPipe(work, job),
    allowableStress: allowableStressOf(work),
    outsideDiameter: job.axial.diameter,
  });
}

/** A pipe that is strained already when the laminate is laid has less left to share. */
function stressToShare(work: Workbook, job: ThicknessJob, substrateWall: Length): Stress {
  const allowableStress = allowableStressOf(work);
  const livePressure = pressureAtWork(work.case.line);
  if (livePressure === 0 || substrateWall === 0) return allowableStress;
  return step(work.recorder, 'laminate/stress-left-at-work', stressLeftAtWork, {
    allowableStress,
    livePressure,
    axialForce: forceOnSide(work, job.axial.diameter, 'pulled'),
    outsideDiameter: job.axial.diameter,
    substrateWall,
  });
}
