import { decide, heading } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';
import type { ThicknessMethod } from '../case/case.js';
import type { LaminateCriterion } from '../design/criteria.js';
import type { Candidate } from '../design/design.js';
import { countsOnMetal } from '../found/counts-on-metal.js';
import { need, type Workbook, warnOwner } from '../job/workbook.js';
import { substrateIgnored } from './ignored.js';
import type { ThicknessJob } from './loads.js';
import { longTermStrength } from './long-term.js';
import type { MissingField, ThicknessRecord } from './method.js';
import { outsideThicknesses } from './outside.js';
import { substrateSharingLoad } from './sharing.js';
import { substrateYielded } from './yielded.js';

/** Every way to find the thickness, by the name that a case gives it. */
export const thicknessMethods: Readonly<Record<ThicknessMethod, ThicknessRecord>> = {
  'substrate ignored': substrateIgnored,
  'substrate sharing load': substrateSharingLoad,
  'substrate yielded': substrateYielded,
  'long-term strength': longTermStrength,
};

/** What a method counts on that the one which ignores the pipe does not; the yielded form warns by itself. */
const COUNTS_ON: Readonly<Partial<Record<ThicknessMethod, string>>> = {
  'substrate sharing load': 'the load that the thinned pipe carries',
  'long-term strength': 'the long-term strength of the laminate in place of the strains of the rule set',
};

/** The method the case names, or the one that needs neither the remaining wall nor the pressure during the work. */
export function chooseMethod(work: Workbook, throughWall: boolean): ThicknessMethod | undefined {
  const { recorder, case: repairCase } = work;
  const named = repairCase.repair.method;
  if (named === undefined) {
    decide(
      recorder,
      'thickness by substrate ignored',
      'the case names no method: this one needs neither the remaining wall nor the pressure during the work',
    );
    return 'substrate ignored';
  }
  if (throughWall && countsOnMetal(named)) {
    work.reasons.push({
      text: `the case names the method "${named}", which counts on metal that is not there when the defect goes through the wall: name "substrate ignored" or none`,
    });
    return undefined;
  }
  decide(recorder, `thickness by ${named}`, 'named by the case');
  const countsOn = COUNTS_ON[named];
  if (countsOn !== undefined)
    warnOwner(work, `The thickness counts on ${countsOn}, as the case asks: less conservative than ignoring the pipe.`);
  return named;
}

/** Thickness by the method that was chosen; what it cannot do without is a missing input of the design. */
export function thicknessByChosen(
  work: Workbook,
  method: ThicknessMethod,
  job: ThicknessJob,
): Candidate<Length, LaminateCriterion>[] | undefined {
  const outcome = thicknessBy(work, method, job);
  if (!isMissing(outcome)) return outcome;
  return need(work, outcome.field, `the case names the method "${method}"`, 'whoever chose the method');
}

/** Thickness by one method, or the field that it lacks. */
export function thicknessBy(
  work: Workbook,
  method: ThicknessMethod,
  job: ThicknessJob,
): Candidate<Length, LaminateCriterion>[] | MissingField {
  heading(work.recorder, `Thickness: ${method}`);
  const record = thicknessMethods[method];
  const missing = record.needs(work.case);
  if (missing !== undefined) return missing;
  const candidates = record.thickness(work, job);
  for (const outside of outsideThicknesses(work, job)) candidates.push(outside);
  return candidates;
}

/** Whether a method lacks a field of the case. */
export function isMissing<T extends object>(outcome: T | MissingField): outcome is MissingField {
  return 'field' in outcome;
}
