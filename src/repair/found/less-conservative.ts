import type { RemainingStrength } from '../../pipe/index.js';
import { practice } from '../../rules/index.js';
import type { StrengthMethod } from '../case/case.js';
import { type Workbook, warn } from '../job/workbook.js';

/** These count on the shape of the loss that was measured, where the others take it at its worst. */
const BY_PROFILE: readonly StrengthMethod[] = ['effective area', 'API 579-1 Level 2'];

/** Warns of what the method says of itself, and of each choice of the case that makes its answer larger. */
export function warnOfChoices(work: Workbook, { method: by, notes, safetyFactor, methods }: RemainingStrength): void {
  for (const note of notes) warn(work, `Remaining strength by ${by}: ${note}.`);
  const { method, flowStress } = work.case.assessment ?? {};
  if (safetyFactor < practice.leastSafetyFactor.value)
    warn(
      work,
      'The safety factor on the failure pressure of the thinned pipe is as the case states, and smaller than what would be taken unasked: less conservative.',
    );
  if (flowStress !== undefined && flowStress !== '1.1 SMYS')
    warn(
      work,
      `The flow stress is ${flowStress}, as the case asks, in place of 1.1 SMYS: less conservative where it is more.`,
    );
  if (method === undefined) return;
  let [lowest, byNamed] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const each of methods) {
    if (!each.inside) continue;
    lowest = Math.min(lowest, each.safePressure);
    if (each.method === method) byNamed = each.safePressure;
  }
  if (byNamed <= lowest && !BY_PROFILE.includes(method)) return;
  warn(
    work,
    `The remaining strength is by ${method} because the case names it, and not by the lowest of the methods: less conservative.`,
  );
}
