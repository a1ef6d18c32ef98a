import { exactly, line } from '../../quantity/index.js';
import { rulesOf } from '../../rules/index.js';
import { type Workbook, warn } from './workbook.js';

/** A number that the case confirms and that is less conservative than the one before it: the warning names both. */
export function warnOfConfirmed(work: Workbook): void {
  if (work.case.confirmed === undefined) return;
  for (const { rule } of rulesOf(work.rules)) {
    if (!('value' in rule)) continue;
    for (const { path, kind, value, instead, lessConservative } of rule.confirmed ?? []) {
      if (!lessConservative) continue;
      const bothNumbers = line(
        `The case confirms ${path} as {0}, where the rule set of this library has {1}: less conservative, on the word of whoever read it.`,
        exactly('confirmed value', kind, value),
        exactly('recalled value', kind, instead),
      );
      warn(work, bothNumbers, rule.clause);
    }
  }
}
