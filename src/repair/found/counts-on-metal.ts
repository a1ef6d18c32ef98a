import type { Amount } from '../../quantity/index.js';
import type { ThicknessMethod } from '../case/case.js';
import type { Workbook } from '../job/workbook.js';

const ON_METAL: readonly (ThicknessMethod | undefined)[] = ['substrate sharing load', 'substrate yielded'];

/** Whether a method counts on metal under the laminate, which is not there once the defect goes through the wall. */
export function countsOnMetal(method: ThicknessMethod | undefined): boolean {
  return ON_METAL.includes(method);
}

/** Whether the case names such a method. */
export function namesMethodOnMetal({ case: { repair } }: Workbook): boolean {
  return countsOnMetal(repair.method);
}

/** A pipe that has more than its code allows while it is sound has nothing to give to a laminate that shares with it. */
export function refuseToShare(
  work: Workbook,
  allowed: 'its allowable stress' | 'what its code allows',
  found: Amount,
  limit: Amount,
): void {
  if (!namesMethodOnMetal(work)) return;
  const { method } = work.case.repair;
  work.reasons.push({
    text: `the method "${method}" counts on the pipe, and the pipe is above ${allowed} where it is sound: lower the design pressure or the loads, or name "substrate ignored"`,
    found,
    limit,
  });
}
