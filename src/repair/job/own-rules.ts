import { type Amount, exactly, type Line, line } from '../../quantity/index.js';
import { differencesFrom, type RuleDifference, type RuleSet, type RuleValue, rulesOf } from '../../rules/index.js';
import { likeOwn } from './rule-set.js';
import { type Workbook, warn } from './workbook.js';

/** Numbers that are less conservative than those of this library, by whoever put them in: each warning names both. */
export function warnOfRules(work: Workbook, own: RuleSet | undefined): void {
  warnOfConfirmed(work);
  if (own !== undefined) warnOfOwn(work);
}

/** A number that the case confirms and that is less conservative than the one before it. */
function warnOfConfirmed(work: Workbook): void {
  if (work.case.confirmed === undefined) return;
  for (const { rule } of rulesOf(work.rules)) {
    if (!('value' in rule)) continue;
    for (const { path, kind, value, instead, lessConservative } of rule.confirmed ?? []) {
      if (!lessConservative) continue;
      const bothNumbers = line(
        `The case confirms ${path} as {0}, where the rule set has {1}: less conservative, on the word of whoever read it.`,
        exactly('confirmed value', kind, value),
        exactly('recalled value', kind, instead),
      );
      warn(work, bothNumbers, rule.clause);
    }
  }
}

/** A value of a rule set of the user's own, whatever it calls itself, with what the case confirms in it. */
function warnOfOwn(work: Workbook): void {
  for (const difference of differencesFrom(likeOwn(work.stated, work.rules), work.rules))
    if (difference.lessConservative) warn(work, bothValues(difference), difference.clause);
}

function bothValues({ path, kind, value, instead }: RuleDifference): Line {
  const amounts: Amount[] = [];
  const said = (name: string, each: RuleValue): string => {
    if (each === null) return 'none';
    if (typeof each === 'boolean') return each ? 'yes' : 'no';
    if (kind === 'word') return 'a number';
    const place = amounts.length;
    amounts.push(exactly(name, kind === 'rows' ? 'count' : kind, each));
    return kind === 'rows' ? `{${place}} rows` : `{${place}}`;
  };
  const [own, library] = [said('own value', value), said('value of this library', instead)];
  return line(
    `The own rule set has ${path} as ${own}, where that of this library has ${library}: less conservative, or so in some cases, on the word of whoever wrote it.`,
    ...amounts,
  );
}
