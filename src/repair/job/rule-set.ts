import { asmePcc2, checkRuleSet, confirmedRules, iso24817, type RuleSet } from '../../rules/index.js';
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
