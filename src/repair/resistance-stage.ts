import { heading, step } from '../formula/index.js';
import {
  forceYieldedAxial,
  performanceFactor,
  pressureLongTerm,
  pressureOfEndForce,
  pressureYieldedHoop,
} from '../laminate/index.js';
import type { Force, GaugePressure, Length } from '../quantity/index.js';
import type { ThicknessMethod } from './case.js';
import type { Candidate } from './design.js';
import { resistanceIgnoringPipe } from './thickness-ignored.js';
import type { ThicknessJob } from './thickness-job.js';
import { resistanceSharingLoad } from './thickness-sharing.js';
import type { Workbook } from './workbook.js';

/** Pressures that the laid thickness resists, line by line of the method that was chosen. */
export function resistanceByMethod(
  work: Workbook,
  method: ThicknessMethod,
  job: ThicknessJob,
  laid: Length,
): Candidate<GaugePressure>[] {
  heading(work.recorder, 'Pressure that the laid thickness resists');
  switch (method) {
    case 'substrate ignored':
      return resistanceIgnoringPipe(work, job, laid);
    case 'substrate sharing load':
      return resistanceSharingLoad(work, job, laid);
    case 'substrate yielded':
      return resistanceOfYieldedPipe(work, job, laid);
    case 'long-term strength':
      return resistanceByLongTermStrength(work, job, laid);
  }
}

function resistanceOfYieldedPipe(
  work: Workbook,
  job: ThicknessJob,
  laminateThickness: Length,
): Candidate<GaugePressure>[] {
  const { recorder, case: repairCase } = work;
  const { axialForce } = repairCase.loads;
  const { outsideDiameter, wallAtEndOfLife: remainingWall } = job.found;
  const { yieldStrength } = repairCase.pipe.material;
  const common = { laminateThickness, yieldStrength, remainingWall };
  const hoop = step(recorder, pressureYieldedHoop, {
    ...common,
    outsideDiameter: job.wrappedDiameter,
    hoopModulus: job.hoopModulus,
    allowableStrain: job.strains.hoop,
  });
  const held = step(recorder, forceYieldedAxial, {
    ...common,
    outsideDiameter,
    axialModulus: job.axialModulus,
    allowableStrain: job.strains.axial,
  });
  const externalForce = Math.abs(axialForce === 'none' ? 0 : axialForce) as Force;
  const axial = step(recorder, pressureOfEndForce, { axialForce: held, outsideDiameter, externalForce });
  return [
    { criterion: 'hoop strain, substrate yielded', value: hoop },
    { criterion: 'axial strain, substrate yielded', value: axial },
  ];
}

function resistanceByLongTermStrength(
  work: Workbook,
  job: ThicknessJob,
  laminateThickness: Length,
): Candidate<GaugePressure>[] {
  const { recorder, rules, case: repairCase } = work;
  const { laminate, repair } = repairCase;
  const byStrain = resistanceIgnoringPipe(work, job, laminateThickness).filter(
    ({ criterion }) => job.found.throughWall || criterion.startsWith('axial'),
  );
  if (laminate.longTermStrength === undefined) return byStrain;
  const { strength, test } = laminate.longTermStrength;
  const tables = test === '1000 h survival' ? rules.performance.survivalTest : rules.performance.designLifeTest;
  const { factor } = step(recorder, performanceFactor, { table: tables[repair.class].value, designLife: repair.life });
  const hoop = step(recorder, pressureLongTerm, {
    laminateThickness,
    outsideDiameter: job.wrappedDiameter,
    longTermStrength: strength,
    performanceFactor: factor * job.strains.cyclicFactor,
  });
  return [{ criterion: 'hoop stress, long-term strength, substrate ignored', value: hoop }, ...byStrain];
}
