import { atMost, positive } from '../../formula/index.js';
import type { Temperature } from '../../quantity/index.js';

/** Where the maker tested: the temperature of the stated time, and the span over which times were measured. */
export interface TestedSpan {
  readonly referenceTemperature: Temperature;
  readonly testedFrom?: Temperature | undefined;
  readonly testedTo?: Temperature | undefined;
}

/** Refuses a span whose ends are swapped or that leaves out its own reference temperature. */
export function checkTestedSpan({ referenceTemperature, testedFrom, testedTo }: TestedSpan): void {
  positive(referenceTemperature, 'referenceTemperature', 'K');
  if (testedFrom !== undefined) {
    positive(testedFrom, 'testedFrom', 'K');
    atMost(testedFrom, referenceTemperature, 'the reference temperature', 'testedFrom', 'K');
  }
  if (testedTo !== undefined) {
    positive(testedTo, 'testedTo', 'K');
    atMost(referenceTemperature, testedTo, 'the highest tested temperature', 'referenceTemperature', 'K');
  }
}

/** Whether temperatures from `lowest` to `highest` leave the tested span; without a stated span that is the reference alone. */
export function leavesTestedSpan(span: TestedSpan, lowest: number, highest = lowest): boolean {
  const { referenceTemperature, testedFrom = referenceTemperature, testedTo = referenceTemperature } = span;
  return lowest < testedFrom || highest > testedTo;
}
