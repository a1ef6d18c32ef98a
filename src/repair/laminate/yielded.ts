import { step } from '../../formula/index.js';
import {
  forceYieldedAxial,
  pressureOfEndForce,
  pressureYieldedHoop,
  thicknessYieldedAxial,
  thicknessYieldedHoop,
  thicknessYieldedLive,
} from '../../laminate/index.js';
import type { GaugePressure, Length } from '../../quantity/index.js';
import type { LaminateCriterion } from '../design/criteria.js';
import type { Candidate } from '../design/design.js';
import { pipeModulus } from '../found/pipe-modulus.js';
import { pressureAtWork } from '../found/pressure-at-work.js';
import { type Workbook, warn } from '../job/workbook.js';
import type { ThicknessJob } from './loads.js';
import type { ThicknessRecord } from './method.js';

const HOOP: LaminateCriterion = 'hoop strain, substrate yielded';
const HOOP_CREDITED: LaminateCriterion = 'hoop strain, substrate yielded, with credit for pressure during application';
const AXIAL: LaminateCriterion = 'axial strain, substrate yielded';

/**
 * The pipe has yielded and holds its yield strength (ISO 24817, 7.5.5; PCC-2, Eq. 6 and 7). Credit for pressure during the
 * work only on request.
 */
export const substrateYielded: ThicknessRecord = {
  countsOnMetal: true,
  needs: () => undefined,
  thickness: (work, job) => {
    warn(
      work,
      'The yielded form counts on the thinned pipe up to its full yield strength, without a safety factor; where that is enough by itself it asks for no laminate. Less conservative than ignoring the pipe.',
    );
    return [hoopThickness(work, job), axialThickness(work, job)];
  },
  resistance: (work, job, laminateThickness) => [
    { criterion: HOOP, value: hoopResistance(work, job, laminateThickness) },
    { criterion: AXIAL, value: axialResistance(work, job, laminateThickness) },
  ],
};

function hoopThickness(work: Workbook, job: ThicknessJob): Candidate<Length, LaminateCriterion> {
  const { line, repair } = work.case;
  const livePressure = pressureAtWork(line);
  if (repair.creditPressureDuringApplication === true && livePressure > 0)
    return creditedThickness(work, job, livePressure);
  const value = step(work.recorder, 'laminate/thickness-yielded-hoop', thicknessYieldedHoop, {
    yieldStrength: work.case.pipe.material.yieldStrength,
    remainingWall: job.found.wallAtEndOfLife,
    outsideDiameter: job.hoop.diameter,
    pressure: work.case.service.designPressure,
    hoopModulus: job.hoop.modulus,
    allowableStrain: job.hoop.strain,
  });
  return { criterion: HOOP, value };
}

function creditedThickness(
  work: Workbook,
  job: ThicknessJob,
  livePressure: GaugePressure,
): Candidate<Length, LaminateCriterion> {
  warn(
    work,
    'The yielded form takes credit for the pressure during application, as the case asks: once the pipe has yielded, equilibrium gives the laminate more strain than that formula admits (a third more in the check case). Less conservative.',
  );
  const value = step(work.recorder, 'laminate/thickness-yielded-live', thicknessYieldedLive, {
    yieldStrength: work.case.pipe.material.yieldStrength,
    remainingWall: job.found.wallAtEndOfLife,
    outsideDiameter: job.hoop.diameter,
    pressure: work.case.service.designPressure,
    hoopModulus: job.hoop.modulus,
    allowableStrain: job.hoop.strain,
    livePressure,
    substrateModulus: pipeModulus(work),
  });
  return { criterion: HOOP_CREDITED, value };
}

function axialThickness(work: Workbook, job: ThicknessJob): Candidate<Length, LaminateCriterion> {
  const value = step(work.recorder, 'laminate/thickness-yielded-axial', thicknessYieldedAxial, {
    yieldStrength: work.case.pipe.material.yieldStrength,
    remainingWall: job.found.wallAtEndOfLife,
    outsideDiameter: job.axial.diameter,
    axialForce: job.axial.force,
    axialModulus: job.axial.modulus,
    allowableStrain: job.axial.strain,
  });
  return { criterion: AXIAL, value };
}

function hoopResistance(work: Workbook, job: ThicknessJob, laminateThickness: Length): GaugePressure {
  return step(work.recorder, 'laminate/pressure-yielded-hoop', pressureYieldedHoop, {
    laminateThickness,
    yieldStrength: work.case.pipe.material.yieldStrength,
    remainingWall: job.found.wallAtEndOfLife,
    outsideDiameter: job.hoop.diameter,
    hoopModulus: job.hoop.modulus,
    allowableStrain: job.hoop.strain,
  });
}

function axialResistance(work: Workbook, job: ThicknessJob, laminateThickness: Length): GaugePressure {
  const held = step(work.recorder, 'laminate/force-yielded-axial', forceYieldedAxial, {
    laminateThickness,
    yieldStrength: work.case.pipe.material.yieldStrength,
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
