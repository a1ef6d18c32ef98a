import { decide, step } from '../../formula/index.js';
import { performanceFactor, pressureLongTerm, thicknessLongTerm } from '../../laminate/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';
import type { LaminateSystem } from '../case/case.js';
import type { Candidate } from '../design/design.js';
import { use, type Workbook } from '../job/workbook.js';
import {
  axialIgnoringPipe,
  axialResistanceIgnoringPipe,
  resistanceIgnoringPipe,
  thicknessIgnoringPipe,
} from './ignored.js';
import type { MethodOutcome, ThicknessJob } from './loads.js';

const CRITERION = 'hoop stress, long-term strength, substrate ignored';

/**
 * By the long-term strength of the laminate from performance tests, the pipe not counted. Such tests speak of the hoop
 * direction only: the axial lines come from the strains, and over a leak the hoop line of the strains counts too.
 */
export function thicknessByLongTermStrength(work: Workbook, job: ThicknessJob): MethodOutcome {
  const { longTermStrength } = work.case.laminate;
  if (longTermStrength === undefined) {
    return { criterion: 'long-term strength', needs: 'the long-term strength of the laminate' };
  }
  const input = strengthOf(work, job, longTermStrength);
  if (job.strains.cyclicFactor < 1) {
    decide(work.recorder, 'factor on the long-term strength lowered by the cyclic factor', 'the tests were static');
  }
  const hoop = step(work.recorder, 'laminate/thickness-long-term', thicknessLongTerm, {
    ...input,
    pressure: work.case.service.designPressure,
  });
  const byStrain = job.found.throughWall ? thicknessIgnoringPipe(work, job) : axialIgnoringPipe(work, job);
  if ('needs' in byStrain) return byStrain;
  return [{ criterion: CRITERION, value: hoop }, ...byStrain];
}

/** Pressures that a laid thickness resists by the same lines. */
export function resistanceByLongTermStrength(
  work: Workbook,
  job: ThicknessJob,
  laminateThickness: Length,
): Candidate<GaugePressure>[] {
  const { longTermStrength } = work.case.laminate;
  const byStrain = job.found.throughWall
    ? resistanceIgnoringPipe(work, job, laminateThickness)
    : axialResistanceIgnoringPipe(work, job, laminateThickness);
  if (longTermStrength === undefined) return byStrain;
  const input = strengthOf(work, job, longTermStrength);
  const hoop = step(work.recorder, 'laminate/pressure-long-term', pressureLongTerm, { ...input, laminateThickness });
  return [{ criterion: CRITERION, value: hoop }, ...byStrain];
}

/** The strength, its factor by class, life and kind of test, and the circle that it acts on. */
function strengthOf(
  work: Workbook,
  job: ThicknessJob,
  { strength, test }: NonNullable<LaminateSystem['longTermStrength']>,
): { readonly outsideDiameter: Length; readonly longTermStrength: Stress; readonly performanceFactor: number } {
  const { rules, case: repairCase } = work;
  const { repair } = repairCase;
  const tables = test === '1000 h survival' ? rules.performance.survivalTest : rules.performance.designLifeTest;
  const table = use(work, `factor on the long-term strength (${test})`, tables[repair.class]);
  const { factor } = step(work.recorder, 'laminate/performance-factor', performanceFactor, {
    table,
    designLife: repair.life,
  });
  return {
    outsideDiameter: job.wrappedDiameter,
    longTermStrength: strength,
    performanceFactor: factor * job.strains.cyclicFactor,
  };
}
