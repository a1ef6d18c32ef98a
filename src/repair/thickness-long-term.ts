import { step } from '../formula/index.js';
import { performanceFactor, thicknessLongTerm } from '../laminate/index.js';
import type { MethodOutcome, ThicknessJob } from './thickness-job.js';
import { use, type Workbook } from './workbook.js';

/** By the long-term strength of the laminate from performance tests, the pipe not counted. */
export function thicknessByLongTermStrength(work: Workbook, job: ThicknessJob): MethodOutcome {
  const { recorder, rules, case: repairCase } = work;
  const { laminate, service, repair } = repairCase;
  const longTermStrength = laminate.longTermStrength;
  if (longTermStrength === undefined)
    return { criterion: 'long-term strength', needs: 'the long-term strength of the laminate' };
  const survival = longTermStrength.test === '1000 h survival';
  const tables = survival ? rules.performance.survivalTest : rules.performance.designLifeTest;
  const table = use(work, `factor on the long-term strength (${longTermStrength.test})`, tables[repair.class]);
  const { factor } = step(recorder, performanceFactor, { table, designLife: repair.life });
  // The pipe is not counted: the safe one of the two forms.
  const hoop = step(recorder, thicknessLongTerm, {
    pressure: service.designPressure,
    outsideDiameter: job.wrappedDiameter,
    longTermStrength: longTermStrength.strength,
    performanceFactor: factor,
  });
  return [{ criterion: 'hoop stress, long-term strength, substrate ignored', value: hoop }];
}
