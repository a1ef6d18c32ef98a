import { decide, step } from '../../formula/index.js';
import {
  forceSharingAxial,
  pressureOfEndForce,
  pressureSharingHoop,
  pressureSharingLive,
  substratePressure,
  thicknessSharingAxial,
  thicknessSharingHoop,
  thicknessSharingLive,
} from '../../laminate/index.js';
import type { Force, GaugePressure, Length, Stress } from '../../quantity/index.js';
import type { Candidate } from '../design/design.js';
import { pipeModulus } from '../found/pipe-modulus.js';
import { pressureAtWork } from '../found/pressure-at-work.js';
import { attempt, type Workbook } from '../job/workbook.js';
import type { MethodOutcome, ThicknessJob } from './loads.js';

/** Pipe and laminate share the load, and the pipe stays below its allowable stress; pressure during the work always counts. */
export function thicknessSharingLoad(work: Workbook, job: ThicknessJob): MethodOutcome {
  const criterion = 'substrate sharing load';
  const { recorder, case: repairCase } = work;
  const { pipe, service } = repairCase;
  const { allowableStress } = pipe.material;
  const livePressure = pressureAtWork(repairCase.line);
  if (allowableStress === undefined) return { criterion, needs: 'the allowable stress of the pipe' };
  const { found, wrappedDiameter: outsideDiameter } = job;
  checkSharedStrain(work, job, allowableStress);
  const Ps = substratePressureOf(work, job, allowableStress);
  const common = { outsideDiameter, allowableStress, substrateModulus: pipeModulus(work) };
  const candidates: Candidate<Length>[] = [];
  const hoop = step(recorder, 'laminate/thickness-sharing-hoop', thicknessSharingHoop, {
    ...common,
    pressure: service.designPressure,
    hoopModulus: job.hoopModulus,
    substratePressure: Ps,
  });
  candidates.push({ criterion: 'hoop stress of the pipe, load shared', value: hoop });
  const live = attempt(work, 'load sharing with pressure during application', () =>
    step(recorder, 'laminate/thickness-sharing-live', thicknessSharingLive, {
      ...common,
      pressure: service.designPressure,
      livePressure,
      remainingWall: found.wallAtEndOfLife,
      hoopModulus: job.hoopModulus,
    }),
  );
  if (live !== undefined)
    candidates.push({ criterion: 'hoop stress of the pipe, with pressure during application', value: live });
  // A defect assessment speaks of the hoop direction only: along the pipe the plain wall that is left counts.
  const axial = step(recorder, 'laminate/thickness-sharing-axial', thicknessSharingAxial, {
    ...common,
    axialForce: job.axialForce,
    axialModulus: job.axialModulus,
    substratePressure: plainWallPressure(work, job, allowableStress),
  });
  candidates.push({ criterion: 'axial stress of the pipe, load shared', value: axial });
  return candidates;
}

/** The laminate takes the strain of the pipe at its allowable stress: that has to be allowed to the laminate too. */
function checkSharedStrain(work: Workbook, job: ThicknessJob, allowableStress: Stress): void {
  const strain = allowableStress / pipeModulus(work);
  if (strain <= job.strains.hoop) return;
  work.reasons.push({
    text: 'sharing load with the pipe at its allowable stress would strain the laminate more than it may be',
    found: { name: 'strain of the pipe at its allowable stress', kind: 'strain', value: strain },
    limit: { name: 'allowable hoop strain of the laminate', kind: 'strain', value: job.strains.hoop },
  });
}

function substratePressureOf(work: Workbook, job: ThicknessJob, allowableStress: Stress): GaugePressure {
  const { strength } = job.found;
  if (strength === undefined) return plainWallPressure(work, job, allowableStress);
  decide(
    work.recorder,
    `P_s from ${strength.method}`,
    `its safe pressure at the end of life, safety factor ${strength.safetyFactor.toPrecision(4)}`,
  );
  return strength.safePressure;
}

function plainWallPressure(work: Workbook, { found }: ThicknessJob, allowableStress: Stress): GaugePressure {
  return step(work.recorder, 'laminate/substrate-pressure', substratePressure, {
    allowableStress,
    remainingWall: found.wallAtEndOfLife,
    outsideDiameter: found.outsideDiameter,
  });
}

/** Pressures that a laid thickness resists while pipe and laminate share the load. */
export function resistanceSharingLoad(
  work: Workbook,
  job: ThicknessJob,
  laminateThickness: Length,
): Candidate<GaugePressure>[] {
  const { recorder, case: repairCase } = work;
  const { allowableStress } = repairCase.pipe.material;
  const livePressure = pressureAtWork(repairCase.line);
  if (allowableStress === undefined) return [];
  const { outsideDiameter, wallAtEndOfLife: remainingWall } = job.found;
  const common = { laminateThickness, allowableStress, substrateModulus: pipeModulus(work) };
  const round = { ...common, outsideDiameter: job.wrappedDiameter, hoopModulus: job.hoopModulus };
  const hoop = step(recorder, 'laminate/pressure-sharing-hoop', pressureSharingHoop, {
    ...round,
    substratePressure: substratePressureOf(work, job, allowableStress),
  });
  const live = step(recorder, 'laminate/pressure-sharing-live', pressureSharingLive, {
    ...round,
    remainingWall,
    livePressure,
  });
  const held = step(recorder, 'laminate/force-sharing-axial', forceSharingAxial, {
    ...common,
    outsideDiameter,
    axialModulus: job.axialModulus,
    substratePressure: plainWallPressure(work, job, allowableStress),
  });
  const externalForce = Math.abs(job.externalForce) as Force;
  return [
    { criterion: 'hoop stress of the pipe, load shared', value: hoop },
    { criterion: 'hoop stress of the pipe, with pressure during application', value: live },
    {
      criterion: 'axial stress of the pipe, load shared',
      value: step(recorder, 'laminate/pressure-of-end-force', pressureOfEndForce, {
        axialForce: held,
        outsideDiameter,
        externalForce,
      }),
    },
  ];
}
