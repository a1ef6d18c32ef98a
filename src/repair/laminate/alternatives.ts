import { decide } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';
import type { ThicknessMethod } from '../case/case.js';
import type { Candidate, Unavailable } from '../design/design.js';
import { countsOnMetal } from '../found/counts-on-metal.js';
import { trial, type Workbook } from '../job/workbook.js';
import { largest } from './candidates.js';
import type { ThicknessJob } from './loads.js';
import { isMissing, thicknessBy, thicknessMethods } from './methods.js';
import { withCredit, withRelief } from './saved-plies.js';
import { whyNot } from './why-not.js';

/**
 * The methods beside the chosen one, each as its largest candidate, and the two lines that would save plies: for
 * comparison, none of them decides anything.
 */
export function alternativesTo(
  work: Workbook,
  chosen: ThicknessMethod,
  job: ThicknessJob,
): (Candidate<Length> | Unavailable)[] {
  const alternatives: (Candidate<Length> | Unavailable)[] = [];
  // They are thicknesses of straight pipe, and some count on metal as it lies in it.
  if (work.case.fitting !== 'none') return alternatives;
  for (const method of Object.keys(thicknessMethods) as ThicknessMethod[]) {
    if (method !== chosen) alternatives.push(alternative(work, method, job));
  }
  alternatives.push(withRelief(work, job), withCredit(work, job));
  return alternatives;
}

function alternative(work: Workbook, method: ThicknessMethod, job: ThicknessJob): Candidate<Length> | Unavailable {
  if (job.found.throughWall && countsOnMetal(method)) {
    return { criterion: method, needs: { text: 'metal that carries load; the defect goes through the wall' } };
  }
  const { result, refusals } = trial(work, method, () => thicknessBy(work, method, job));
  if (result === undefined) {
    const needs = whyNot(refusals);
    decide(work.recorder, `${method} not computed`, needs);
    return { criterion: method, needs };
  }
  if (isMissing(result)) {
    decide(work.recorder, `${method} not computed`, `it needs ${result.what}`);
    return { criterion: method, needs: { text: result.what } };
  }
  return { criterion: method, value: largest(result).value };
}
