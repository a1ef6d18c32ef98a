import { decide, step } from '../formula/index.js';
import {
  substratePressure,
  thicknessSharingAxial,
  thicknessSharingHoop,
  thicknessSharingLive,
} from '../laminate/index.js';
import type { GaugePressure, Length, Stress } from '../quantity/index.js';
import type { Candidate } from './design.js';
import { pipeModulus } from './pipe-modulus.js';
import type { MethodOutcome, ThicknessJob } from './thickness-job.js';
import { attempt, type Workbook } from './workbook.js';

/** Pipe and laminate share the load, and the pipe stays below its allowable stress; pressure during the work always counts. */
export function thicknessSharingLoad(work: Workbook, job: ThicknessJob): MethodOutcome {
  const criterion = 'substrate sharing load';
  const { recorder, case: repairCase } = work;
  const { pipe, service, repair, laminate } = repairCase;
  const { allowableStress } = pipe.material;
  const livePressure = repair.pressureDuringApplication;
  if (allowableStress === undefined) return { criterion, needs: 'the allowable stress of the pipe' };
  if (livePressure === undefined) return { criterion, needs: 'the pressure during application' };
  const { found, wrappedDiameter: outsideDiameter } = job;
  const Ps = substratePressureOf(work, job, allowableStress);
  const common = { outsideDiameter, allowableStress, substrateModulus: pipeModulus(work) };
  const candidates: Candidate<Length>[] = [];
  const hoop = step(recorder, thicknessSharingHoop, {
    ...common,
    pressure: service.designPressure,
    hoopModulus: laminate.hoopModulus,
    substratePressure: Ps,
  });
  candidates.push({ criterion: 'hoop stress of the pipe, load shared', value: hoop });
  const live = attempt(work, 'load sharing with pressure during application', () =>
    step(recorder, thicknessSharingLive, {
      ...common,
      pressure: service.designPressure,
      livePressure,
      remainingWall: found.wallAtEndOfLife,
      hoopModulus: laminate.hoopModulus,
    }),
  );
  if (live !== undefined)
    candidates.push({ criterion: 'hoop stress of the pipe, with pressure during application', value: live });
  // A defect assessment speaks of the hoop direction only: along the pipe the plain wall that is left counts.
  const axial = step(recorder, thicknessSharingAxial, {
    ...common,
    axialForce: job.axialForce,
    axialModulus: laminate.axialModulus,
    substratePressure: plainWallPressure(work, job, allowableStress),
  });
  candidates.push({ criterion: 'axial stress of the pipe, load shared', value: axial });
  return candidates;
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
  return step(work.recorder, substratePressure, {
    allowableStress,
    remainingWall: found.wallAtEndOfLife,
    outsideDiameter: found.outsideDiameter,
  });
}
