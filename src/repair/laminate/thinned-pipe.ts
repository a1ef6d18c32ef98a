import { decide, step } from '../../formula/index.js';
import { pipeStressAtStrain, substratePressure, substratePressureShared } from '../../laminate/index.js';
import { exactly, type GaugePressure, line, type Strain, type Stress } from '../../quantity/index.js';
import { pipeModulus } from '../found/pipe-modulus.js';
import type { Workbook } from '../job/workbook.js';
import type { ThicknessJob } from './loads.js';

/** The case gives it: the `needs` of sharing load has seen to that. */
export function allowableStressOf(work: Workbook): Stress {
  return work.case.pipe.material.allowableStress as Stress;
}

/** P_s: what the thinned pipe holds alone, by its assessment where there is one, else by the plain wall that is left. */
export function pressureOfThinnedPipe(work: Workbook, job: ThicknessJob): GaugePressure {
  const { strength } = job.found;
  if (strength === undefined) return pressureOfPlainWall(work, job);
  decide(
    work.recorder,
    `P_s from ${strength.method}`,
    line(
      'its safe pressure at the end of life, safety factor {0}',
      exactly('safety factor', 'number', strength.safetyFactor),
    ),
  );
  return strength.safePressure;
}

/** P_s of the least wall at its allowable stress, on the diameter of the pipe. */
export function pressureOfPlainWall(work: Workbook, { found }: ThicknessJob): GaugePressure {
  return step(work.recorder, 'laminate/substrate-pressure', substratePressure, {
    allowableStress: allowableStressOf(work),
    remainingWall: found.wallAtEndOfLife,
    outsideDiameter: found.outsideDiameter,
  });
}

/** P_s at the stress that the pipe comes to round itself, on the circle that the pressure acts on under the laminate. */
export function pressureUnderLaminate(work: Workbook, job: ThicknessJob, pipeStress: Stress): GaugePressure {
  return step(work.recorder, 'laminate/substrate-pressure-shared', substratePressureShared, {
    substratePressure: pressureOfThinnedPipe(work, job),
    allowableStress: allowableStressOf(work),
    pipeStress,
    outsideDiameter: job.axial.diameter,
    wrappedDiameter: job.hoop.diameter,
  });
}

/** What the pipe comes to before it or the laminate is at its limit: one rule for sharing load and for a pipe that may yield. */
export function stressOfPipe(work: Workbook, limitStress: Stress, allowableStrain: Strain, way: string): Stress {
  const limits = { limitStress, substrateModulus: pipeModulus(work), allowableStrain };
  return step(work.recorder, 'laminate/pipe-stress-at-strain', pipeStressAtStrain, limits, way);
}
