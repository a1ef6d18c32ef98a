import { step } from '../../formula/index.js';
import {
  forceYieldedAxial,
  pressureOfEndForce,
  pressureYieldedHoop,
  thicknessYieldedAxial,
  thicknessYieldedHoop,
  thicknessYieldedLive,
} from '../../laminate/index.js';
import type { Force, GaugePressure, Length } from '../../quantity/index.js';
import type { Candidate } from '../design/design.js';
import { pipeModulus } from '../found/pipe-modulus.js';
import { pressureAtWork } from '../found/pressure-at-work.js';
import { type Workbook, warn } from '../job/workbook.js';
import type { MethodOutcome, ThicknessJob } from './loads.js';

/** The pipe has yielded and holds its yield strength; credit for pressure during the work only on request. */
export function thicknessOfYieldedPipe(work: Workbook, job: ThicknessJob): MethodOutcome {
  const { recorder, case: repairCase } = work;
  const { pipe, service, repair } = repairCase;
  const { found, strains, wrappedDiameter: outsideDiameter } = job;
  warn(
    work,
    'The yielded form counts on the thinned pipe up to its full yield strength, without a safety factor; where that is enough by itself it asks for no laminate. Less conservative than ignoring the pipe.',
  );
  const common = { yieldStrength: pipe.material.yieldStrength, remainingWall: found.wallAtEndOfLife };
  const hoopInput = {
    ...common,
    outsideDiameter,
    pressure: service.designPressure,
    hoopModulus: job.hoopModulus,
    allowableStrain: strains.hoop,
  };
  const axial = step(recorder, 'laminate/thickness-yielded-axial', thicknessYieldedAxial, {
    ...common,
    outsideDiameter: found.outsideDiameter,
    axialForce: job.axialForce,
    axialModulus: job.axialModulus,
    allowableStrain: strains.axial,
  });
  const axialCandidate = { criterion: 'axial strain, substrate yielded', value: axial };
  const livePressure = pressureAtWork(repairCase.line);
  if (repair.creditPressureDuringApplication === true && livePressure > 0) {
    warn(
      work,
      'The yielded form takes credit for the pressure during application, as the case asks: once the pipe has yielded, equilibrium gives the laminate more strain than that formula admits (a third more in the check case). Less conservative.',
    );
    const hoop = step(recorder, 'laminate/thickness-yielded-live', thicknessYieldedLive, {
      ...hoopInput,
      livePressure,
      substrateModulus: pipeModulus(work),
    });
    return [
      { criterion: 'hoop strain, substrate yielded, with credit for pressure during application', value: hoop },
      axialCandidate,
    ];
  }
  const hoop = step(recorder, 'laminate/thickness-yielded-hoop', thicknessYieldedHoop, hoopInput);
  return [{ criterion: 'hoop strain, substrate yielded', value: hoop }, axialCandidate];
}

/** Pressures that a laid thickness resists while the pipe yields. */
export function resistanceOfYieldedPipe(
  work: Workbook,
  job: ThicknessJob,
  laminateThickness: Length,
): Candidate<GaugePressure>[] {
  const { recorder, case: repairCase } = work;
  const { outsideDiameter, wallAtEndOfLife: remainingWall } = job.found;
  const { yieldStrength } = repairCase.pipe.material;
  const common = { laminateThickness, yieldStrength, remainingWall };
  const hoop = step(recorder, 'laminate/pressure-yielded-hoop', pressureYieldedHoop, {
    ...common,
    outsideDiameter: job.wrappedDiameter,
    hoopModulus: job.hoopModulus,
    allowableStrain: job.strains.hoop,
  });
  const held = step(recorder, 'laminate/force-yielded-axial', forceYieldedAxial, {
    ...common,
    outsideDiameter,
    axialModulus: job.axialModulus,
    allowableStrain: job.strains.axial,
  });
  const externalForce = Math.abs(job.externalForce) as Force;
  const axial = step(recorder, 'laminate/pressure-of-end-force', pressureOfEndForce, {
    axialForce: held,
    outsideDiameter,
    externalForce,
  });
  return [
    { criterion: 'hoop strain, substrate yielded', value: hoop },
    { criterion: 'axial strain, substrate yielded', value: axial },
  ];
}
