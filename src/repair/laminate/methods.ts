import { decide, heading } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';
import type { ThicknessMethod } from '../case/case.js';
import type { Candidate, Unavailable } from '../design/design.js';
import { need, trial, type Workbook } from '../job/workbook.js';
import { thicknessIgnoringPipe } from './ignored.js';
import type { MethodOutcome, ThicknessJob } from './loads.js';
import { thicknessByLongTermStrength } from './long-term.js';
import { thicknessSharingLoad } from './sharing.js';
import { thicknessOfYieldedPipe } from './yielded.js';

const ALL: readonly ThicknessMethod[] = [
  'substrate ignored',
  'substrate sharing load',
  'substrate yielded',
  'long-term strength',
];

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
  if (throughWall && (named === 'substrate sharing load' || named === 'substrate yielded')) {
    work.reasons.push({
      text: `the case names the method "${named}", which counts on metal that is not there when the defect goes through the wall: name "substrate ignored" or none`,
    });
    return undefined;
  }
  decide(recorder, `thickness by ${named}`, 'named by the case');
  return named;
}

/** Thickness by one method; what is missing becomes a missing input only when the case chose this method. */
export function thicknessBy(work: Workbook, method: ThicknessMethod, job: ThicknessJob): MethodOutcome {
  heading(work.recorder, `Thickness: ${method}`);
  switch (method) {
    case 'substrate ignored':
      return thicknessIgnoringPipe(work, job);
    case 'substrate sharing load':
      return thicknessSharingLoad(work, job);
    case 'substrate yielded':
      return thicknessOfYieldedPipe(work, job);
    case 'long-term strength':
      return thicknessByLongTermStrength(work, job);
  }
}

/** The methods beside the chosen one, each as its largest candidate, for comparison. */
export function alternativesTo(
  work: Workbook,
  chosen: ThicknessMethod,
  job: ThicknessJob,
): (Candidate<Length> | Unavailable)[] {
  return ALL.filter((method) => method !== chosen).map((method) => {
    if (job.found.throughWall && (method === 'substrate sharing load' || method === 'substrate yielded')) {
      return { criterion: method, needs: 'metal that carries load; the defect goes through the wall' };
    }
    const { result: outcome, refusals } = trial(work, method, () => thicknessBy(work, method, job));
    const needs =
      outcome === undefined ? (refusals[0]?.text ?? 'another case') : 'needs' in outcome ? outcome.needs : '';
    if (outcome === undefined || 'needs' in outcome) {
      decide(work.recorder, `${method} not computed`, outcome === undefined ? needs : `it needs ${needs}`);
      return { criterion: method, needs };
    }
    const value = Math.max(...outcome.map((candidate) => candidate.value)) as Length;
    return { criterion: method, value };
  });
}

/** What a missing input of the chosen method means for the design. */
export function needFor(work: Workbook, outcome: Unavailable): void {
  need(work, fieldOf(outcome.needs), `the case names the method "${outcome.criterion}"`, 'whoever chose the method');
}

const FIELDS: Readonly<Record<string, string>> = {
  'the allowable stress of the pipe': 'pipe.material.allowableStress',
  'the long-term strength of the laminate': 'laminate.longTermStrength',
};

function fieldOf(needs: string): string {
  return FIELDS[needs] ?? needs;
}
