import type { Defect } from '../case/case.js';

const FROM_INSIDE: readonly Defect['cause'][] = ['internal corrosion', 'internal erosion'];

/** Whether the loss leaves a hollow on the outside, round a hole as well; a cause that nobody knows may. */
export function leavesHollow({ cause }: Defect): boolean {
  return !FROM_INSIDE.includes(cause);
}
