import { step } from '../../formula/index.js';
import {
  forceYieldedAxial,
  pressureOfEndForce,
  pressureYieldedHoop,
  thicknessYieldedAxial,
  thicknessYieldedHoop,
} from '../../laminate/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';
import type { LaminateCriterion } from '../design/criteria.js';
import type { Candidate } from '../design/design.js';
import { pressureLeft } from '../found/external-force.js';
import { type Workbook, warnOwner } from '../job/workbook.js';
import type { ThicknessJob } from './loads.js';
import type { ThicknessRecord } from './method.js';
import { stressOfPipe } from './thinned-pipe.js';

const HOOP: LaminateCriterion = 'hoop strain, substrate yielded';
const AXIAL: LaminateCriterion = 'axial strain, substrate yielded';

/**
 * The pipe may yield: it holds what it carries at the allowable strain of the laminate, its yield strength at most (ISO
 * 24817, 7.5.5; PCC-2, Eq. 6 and 7). Pressure during the work is no credit: see `savedPlies`.
 */
export const substrateYielded: ThicknessRecord = {
  needs: () => undefined,
  thickness: (work, job) => {
    warnOwner(
      work,
      'The yielded form counts on the thinned pipe up to its yield strength, without a safety factor; where that is enough by itself it asks for no laminate. Less conservative than ignoring the pipe.',
    );
    return [hoopThickness(work, job), axialThickness(work, job)];
  },
  resistance: (work, job, laminateThickness) => [
    { criterion: HOOP, value: hoopResistance(work, job, laminateThickness) },
    { criterion: AXIAL, value: axialResistance(work, job, laminateThickness) },
  ],
};

function hoopThickness(work: Workbook, job: ThicknessJob): Candidate<Length, LaminateCriterion> {
  const value = step(work.recorder, 'laminate/thickness-yielded-hoop', thicknessYieldedHoop, {
    pipeStress: stressRound(work, job),
    remainingWall: job.found.wallAtEndOfLife,
    outsideDiameter: job.hoop.diameter,
    pressure: job.hoop.pressure,
    hoopModulus: job.hoop.modulus,
    allowableStrain: job.hoop.strain,
  });
  return { criterion: HOOP, value };
}

function axialThickness(work: Workbook, job: ThicknessJob): Candidate<Length, LaminateCriterion> {
  const value = step(work.recorder, 'laminate/thickness-yielded-axial', thicknessYieldedAxial, {
    pipeStress: stressAlong(work, job),
    remainingWall: job.found.wallAtEndOfLife,
    outsideDiameter: job.axial.diameter,
    axialForce: job.axial.force,
    axialModulus: job.axial.modulus,
    allowableStrain: job.axial.strain,
  });
  return { criterion: AXIAL, value };
}

function hoopResistance(work: Workbook, job: ThicknessJob, laminateThickness: Length): GaugePressure {
  const held = step(work.recorder, 'laminate/pressure-yielded-hoop', pressureYieldedHoop, {
    laminateThickness,
    pipeStress: stressRound(work, job),
    remainingWall: job.found.wallAtEndOfLife,
    outsideDiameter: job.hoop.diameter,
    hoopModulus: job.hoop.modulus,
    allowableStrain: job.hoop.strain,
  });
  return pressureLeft(work, job.axial.diameter, held);
}

function axialResistance(work: Workbook, job: ThicknessJob, laminateThickness: Length): GaugePressure {
  const held = step(work.recorder, 'laminate/force-yielded-axial', forceYieldedAxial, {
    laminateThickness,
    pipeStress: stressAlong(work, job),
    remainingWall: job.found.wallAtEndOfLife,
    outsideDiameter: job.axial.diameter,
    axialModulus: job.axial.modulus,
    allowableStrain: job.axial.strain,
  });
  const ends = {
    axialForce: held,
    outsideDiameter: job.axial.diameter,
    externalForce: job.axial.forceWithoutPressure,
  };
  return step(work.recorder, 'laminate/pressure-of-end-force', pressureOfEndForce, ends);
}

/** The yield strength, or less where the laminate comes to its strain before the pipe yields. */
function stressRound(work: Workbook, job: ThicknessJob): Stress {
  return stressOfPipe(work, work.case.pipe.material.yieldStrength, job.hoop.strain, 'round the pipe');
}

function stressAlong(work: Workbook, job: ThicknessJob): Stress {
  return stressOfPipe(work, work.case.pipe.material.yieldStrength, job.axial.strain, 'along the pipe');
}
