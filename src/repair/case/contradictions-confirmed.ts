import { line } from '../../quantity/index.js';
import { coefficientTable, patternOf } from '../../rules/index.js';
import type { RepairCase } from './case.js';
import type { Note } from './contradiction.js';
import { saysNothing } from './says-nothing.js';

/** A number that is confirmed is one of a rule set, read by somebody in some edition of it; whether it is one of this very set is asked where the set is known. */
export function inConfirmed({ confirmed = [] }: RepairCase, note: Note): void {
  for (const [index, { path, by, edition }] of confirmed.entries()) {
    if (!coefficientTable.has(patternOf(path)))
      note({
        path: `confirmed[${index}].path`,
        must: line('be the path of a number of a rule set, as overlap.minimum'),
      });
    if (saysNothing(by))
      note({ path: `confirmed[${index}].by`, must: line('name the reader who answers for the number') });
    if (saysNothing(edition))
      note({ path: `confirmed[${index}].edition`, must: line('name the edition that was read') });
  }
}
