import { decide, heading, step } from '../../formula/index.js';
import type { GaugePressure, Length } from '../../quantity/index.js';
import { carryingThickness } from '../../wrap/index.js';
import type { ThicknessMethod } from '../case/case.js';
import { type LaminateCriterion, roundThePipe } from '../design/criteria.js';
import type { Candidate, Governed, JointDesign } from '../design/design.js';
import type { Workbook } from '../job/workbook.js';
import { smallest } from './candidates.js';
import { type LeakResistance, resistanceOverHole } from './leak-resistance.js';
import type { ThicknessJob } from './loads.js';
import { thicknessMethods } from './methods.js';
import { outsideResistances } from './outside.js';

/**
 * The pressure that a laid thickness resists: the lowest by the lines of the method, and over the hole. Every criterion of
 * every design and of every rating passes here: here is the place to hold each of them against the design pressure.
 */
export function resistanceOf(
  work: Workbook,
  method: ThicknessMethod,
  job: ThicknessJob,
  leak: LeakResistance | undefined,
  laid: Length,
  joints: JointDesign | undefined,
  plyThickness: Length,
): Governed<GaugePressure, LaminateCriterion> {
  heading(work.recorder, 'Pressure that the laid thickness resists');
  const through = carryingAlong(work, laid, joints, plyThickness);
  const candidates = resistanceAtJoints(work, method, job, laid, through);
  for (const outside of outsideResistances(work, job, laid)) candidates.push(outside);
  if (leak !== undefined)
    candidates.push({ criterion: 'leak through the hole', value: resistanceOverHole(work, leak, through) });
  const lowest = smallest(candidates);
  return { candidates, governing: lowest.criterion, value: lowest.value };
}

/** The plies that go through along the pipe at the worst place; all of them where the wrap has no joints. */
function carryingAlong(work: Workbook, laid: Length, joints: JointDesign | undefined, plyThickness: Length): Length {
  if (joints === undefined) return laid;
  const plies = { laidThickness: laid, lostPlies: joints.lostPlies, plyThickness };
  return step(work.recorder, 'wrap/carrying-thickness', carryingThickness, plies);
}

/** By the lines of the method: round the pipe every ply counts, along it those that go through. */
function resistanceAtJoints(
  work: Workbook,
  method: ThicknessMethod,
  job: ThicknessJob,
  laid: Length,
  through: Length,
): Candidate<GaugePressure, LaminateCriterion>[] {
  const { resistance } = thicknessMethods[method];
  const whole = resistance(work, job, laid);
  if (through === laid) return whole;
  decide(work.recorder, 'lines along the pipe by the plies that go through at a joint', 'the others end there');
  const counted: Candidate<GaugePressure, LaminateCriterion>[] = [];
  for (const each of whole) if (roundThePipe.includes(each.criterion)) counted.push(each);
  for (const each of resistance(work, job, through)) if (!roundThePipe.includes(each.criterion)) counted.push(each);
  return counted;
}
