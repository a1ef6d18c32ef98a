import { asmePcc2, checkRuleSet, confirmedRules, differencesFrom, iso24817, type RuleSet } from '../../rules/index.js';
import type { Basis, RepairCase } from '../case/case.js';
import type { DesignOptions } from '../design/design.js';

const RULE_SETS: Readonly<Record<Basis, RuleSet>> = { 'ISO 24817': iso24817, 'ASME PCC-2': asmePcc2 };

/** The options as a design keeps them: with a copy of a rule set of the user's own, once it has the shape of one. */
export function checkOptions(options: DesignOptions): DesignOptions {
  return options.rules === undefined ? options : { ...options, rules: checkRuleSet(options.rules) };
}

/** The rules of a design: those that the case names or the user brings, with the numbers that the case confirms. */
export function ruleSetOf({ basis, confirmed = [] }: RepairCase, { rules = RULE_SETS[basis] }: DesignOptions): RuleSet {
  return confirmed.length === 0 ? rules : confirmedRules(rules, confirmed);
}

/** The set of this library that a set of the user's own is held against: the one whose id it has, else the one of the case. */
export function likeOwn({ basis }: RepairCase, rules: RuleSet): RuleSet {
  return Object.values(RULE_SETS).find(({ id }) => id === rules.id) ?? RULE_SETS[basis];
}

/** How a design names its rules: a set of the user's own as such, and never by the heading of this library alone. */
export function namedRules(repairCase: RepairCase, { rules, rulesFrom }: DesignOptions): string {
  if (rules === undefined) return RULE_SETS[repairCase.basis].heading;
  const like = likeOwn(repairCase, rules);
  const called = rules.heading === like.heading ? '' : ` "${rules.heading}"`;
  const from = rulesFrom === undefined ? '' : `, ${rulesFrom}`;
  const { length } = differencesFrom(like, rules);
  const unlike = length === 0 ? 'no value differs' : length === 1 ? '1 value differs' : `${length} values differ`;
  return `own rule set${called}${from}: ${unlike} from the set ${like.heading}`;
}
