import { decide, step } from '../formula/index.js';
import { performanceFactor, thicknessLongTerm } from '../laminate/index.js';
import { axialIgnoringPipe, thicknessIgnoringPipe } from './thickness-ignored.js';
import type { MethodOutcome, ThicknessJob } from './thickness-job.js';
import { use, type Workbook } from './workbook.js';

/**
 * By the long-term strength of the laminate from performance tests, the pipe not counted. Such tests speak of the hoop
 * direction only: the axial lines come from the strains, and over a leak the hoop line of the strains counts too.
 */
export function thicknessByLongTermStrength(work: Workbook, job: ThicknessJob): MethodOutcome {
  const { recorder, rules, case: repairCase } = work;
  const { laminate, service, repair } = repairCase;
  const longTermStrength = laminate.longTermStrength;
  if (longTermStrength === undefined) {
    return { criterion: 'long-term strength', needs: 'the long-term strength of the laminate' };
  }
  const survival = longTermStrength.test === '1000 h survival';
  const tables = survival ? rules.performance.survivalTest : rules.performance.designLifeTest;
  const table = use(work, `factor on the long-term strength (${longTermStrength.test})`, tables[repair.class]);
  const { factor } = step(recorder, performanceFactor, { table, designLife: repair.life });
  const fc = job.strains.cyclicFactor;
  if (fc < 1)
    decide(recorder, 'factor on the long-term strength lowered by the cyclic factor', 'the tests were static');
  const hoop = step(recorder, thicknessLongTerm, {
    pressure: service.designPressure,
    outsideDiameter: job.wrappedDiameter,
    longTermStrength: longTermStrength.strength,
    performanceFactor: factor * fc,
  });
  const byStrain = job.found.throughWall ? thicknessIgnoringPipe(work, job) : axialIgnoringPipe(work, job);
  if ('needs' in byStrain) return byStrain;
  return [{ criterion: 'hoop stress, long-term strength, substrate ignored', value: hoop }, ...byStrain];
}
