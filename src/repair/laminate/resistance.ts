import { heading } from '../../formula/index.js';
import type { GaugePressure, Length } from '../../quantity/index.js';
import type { ThicknessMethod } from '../case/case.js';
import type { LaminateCriterion } from '../design/criteria.js';
import type { Governed } from '../design/design.js';
import type { Workbook } from '../job/workbook.js';
import { smallest } from './candidates.js';
import { type LeakResistance, resistanceOverHole } from './leak-resistance.js';
import type { ThicknessJob } from './loads.js';
import { thicknessMethods } from './methods.js';

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
): Governed<GaugePressure, LaminateCriterion> {
  heading(work.recorder, 'Pressure that the laid thickness resists');
  const candidates = thicknessMethods[method].resistance(work, job, laid);
  if (leak !== undefined)
    candidates.push({ criterion: 'leak through the hole', value: resistanceOverHole(work, leak, laid) });
  const lowest = smallest(candidates);
  return { candidates, governing: lowest.criterion, value: lowest.value };
}
