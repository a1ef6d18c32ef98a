import { exactly, line } from '../../quantity/index.js';
import { rulesOf } from '../../rules/index.js';
import type { DesignOptions } from '../design/design.js';
import { type Workbook, warn } from './workbook.js';

/**
 * A number that the case confirms, or a rule set that the user brings, and that is less conservative than the one before it:
 * the warning names both. The rule sets of this library hold none.
 */
export function warnOfConfirmed(work: Workbook, { rules }: DesignOptions): void {
  if (work.case.confirmed === undefined && rules === undefined) return;
  for (const { rule } of rulesOf(work.rules)) {
    if (!('value' in rule)) continue;
    for (const { path, kind, value, instead, lessConservative } of rule.confirmed ?? []) {
      if (!lessConservative) continue;
      const bothNumbers = line(
        `${path} is confirmed as {0}, where the rule set had {1} before: less conservative, on the word of whoever read it.`,
        exactly('confirmed value', kind, value),
        exactly('recalled value', kind, instead),
      );
      warn(work, bothNumbers, rule.clause);
    }
  }
}
