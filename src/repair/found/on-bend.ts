import type { RepairCase } from '../case/case.js';

/** Whether the repair lies on a bend. */
export function liesOnBend({ fitting }: RepairCase): boolean {
  return fitting !== 'none' && fitting.kind === 'bend';
}
