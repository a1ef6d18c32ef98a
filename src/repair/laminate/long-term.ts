import { decide, step } from '../../formula/index.js';
import {
  longTermStrengthAt,
  performanceFactor,
  performanceUnderCycles,
  pressureLongTerm,
  thicknessLongTerm,
} from '../../laminate/index.js';
import type { Stress, Temperature } from '../../quantity/index.js';
import type { LaminateSystem } from '../case/case.js';
import type { LaminateCriterion } from '../design/criteria.js';
import { pressureLeft } from '../found/external-force.js';
import { use, type Workbook } from '../job/workbook.js';
import { hottestUpTo } from '../limits/temperature.js';
import { substrateIgnored } from './ignored.js';
import { axialResistances, axialThicknesses } from './ignored-axial.js';
import type { ThicknessJob } from './loads.js';
import type { ThicknessRecord } from './method.js';

const HOOP: LaminateCriterion = 'hoop stress, long-term strength, substrate ignored';

type LongTermStrength = NonNullable<LaminateSystem['longTermStrength']>;

/**
 * By the long-term strength of the laminate from performance tests, the pipe not counted (ISO 24817, 7.5.6; PCC-2, Eq. 11).
 * Such tests speak of the hoop direction only: the axial lines come from the strains, and over a leak the hoop line of the
 * strains counts too.
 */
export const longTermStrength: ThicknessRecord = {
  needs: ({ laminate: { longTermStrength: given } }) => {
    if (given === undefined)
      return { field: 'laminate.longTermStrength', what: 'the long-term strength of the laminate' };
    if (given.testTemperature !== undefined) return undefined;
    return { field: 'laminate.longTermStrength.testTemperature', what: 'the temperature of the long-term tests' };
  },
  thickness: (work, job) => {
    const { strength, test } = strengthOf(work);
    const factor = factorOf(work, job, test);
    if (job.strains.cyclicFactor < 1) {
      decide(work.recorder, 'factor on the long-term strength lowered by the cyclic factor', 'the tests were static');
    }
    const value = step(work.recorder, 'laminate/thickness-long-term', thicknessLongTerm, {
      pressure: job.hoop.pressure,
      outsideDiameter: job.hoop.diameter,
      longTermStrength: strength,
      performanceFactor: factor,
    });
    const byStrain = job.found.throughWall ? substrateIgnored.thickness(work, job) : axialThicknesses(work, job);
    byStrain.unshift({ criterion: HOOP, value });
    return byStrain;
  },
  resistance: (work, job, laminateThickness) => {
    const { strength, test } = strengthOf(work);
    const value = step(work.recorder, 'laminate/pressure-long-term', pressureLongTerm, {
      laminateThickness,
      outsideDiameter: job.hoop.diameter,
      longTermStrength: strength,
      performanceFactor: factorOf(work, job, test),
    });
    const byStrain = job.found.throughWall
      ? substrateIgnored.resistance(work, job, laminateThickness)
      : axialResistances(work, job, laminateThickness);
    byStrain.unshift({ criterion: HOOP, value: pressureLeft(work, job.axial.diameter, value) });
    return byStrain;
  },
};

/** At the hottest steel, from one series of tests or two. The case gives it: `needs` has seen to that. */
function strengthOf(work: Workbook): { readonly strength: Stress; readonly test: LongTermStrength['test'] } {
  const given = work.case.laminate.longTermStrength as LongTermStrength;
  const first = { strength: given.strength, testTemperature: given.testTemperature as Temperature };
  const { second = first } = given;
  const [cool, warm] = second.testTemperature < first.testTemperature ? [second, first] : [first, second];
  const strength = step(work.recorder, 'laminate/long-term-strength-at', longTermStrengthAt, {
    coolStrength: cool.strength,
    coolTemperature: cool.testTemperature,
    warmStrength: warm.strength,
    warmTemperature: warm.testTemperature,
    designTemperature: hottestUpTo(work.case, warm.testTemperature),
  });
  return { strength, test: given.test };
}

/** By class, life and kind of test, lowered for cycles as the strains are. */
function factorOf(work: Workbook, job: ThicknessJob, test: LongTermStrength['test']): number {
  const { recorder, rules, case: repairCase } = work;
  const { class: repairClass, life: designLife } = repairCase.repair;
  const tables = test === '1000 h survival' ? rules.performance.survivalTest : rules.performance.designLifeTest;
  const table = use(work, `factor on the long-term strength (${test})`, tables[repairClass]);
  const { factor } = step(recorder, 'laminate/performance-factor', performanceFactor, { table, designLife });
  return step(recorder, 'laminate/performance-under-cycles', performanceUnderCycles, {
    performanceFactor: factor,
    cyclicFactor: job.strains.cyclicFactor,
  });
}
