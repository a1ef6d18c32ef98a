import { line } from '../../quantity/index.js';
import { coefficientTable, patternOf } from '../../rules/index.js';
import type { RepairCase } from './case.js';
import type { Note } from './contradiction.js';

/** A number that is confirmed is one of a rule set; whether it is one of this very set is asked where the set is known. */
export function inConfirmed({ confirmed = [] }: RepairCase, note: Note): void {
  for (const [index, { path }] of confirmed.entries()) {
    if (coefficientTable.has(patternOf(path))) continue;
    note({ path: `confirmed[${index}].path`, must: line('be the path of a number of a rule set, as overlap.minimum') });
  }
}
