import { step } from '../formula/index.js';
import { thicknessYieldedAxial, thicknessYieldedHoop, thicknessYieldedLive } from '../laminate/index.js';
import { pipeModulus } from './pipe-modulus.js';
import type { MethodOutcome, ThicknessJob } from './thickness-job.js';
import { type Workbook, warn } from './workbook.js';

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
  const axial = step(recorder, thicknessYieldedAxial, {
    ...common,
    outsideDiameter: found.outsideDiameter,
    axialForce: job.axialForce,
    axialModulus: job.axialModulus,
    allowableStrain: strains.axial,
  });
  const axialCandidate = { criterion: 'axial strain, substrate yielded', value: axial };
  const livePressure = repair.pressureDuringApplication;
  if (repair.creditPressureDuringApplication === true && livePressure !== undefined && livePressure > 0) {
    warn(
      work,
      'The yielded form takes credit for the pressure during application, as the case asks: once the pipe has yielded, equilibrium gives the laminate more strain than that formula admits (a third more in the check case). Less conservative.',
    );
    const hoop = step(recorder, thicknessYieldedLive, {
      ...hoopInput,
      livePressure,
      substrateModulus: pipeModulus(work),
    });
    return [
      { criterion: 'hoop strain, substrate yielded, with credit for pressure during application', value: hoop },
      axialCandidate,
    ];
  }
  const hoop = step(recorder, thicknessYieldedHoop, hoopInput);
  return [{ criterion: 'hoop strain, substrate yielded', value: hoop }, axialCandidate];
}
