export { asmePcc2 } from './asme-pcc-2.js';
export { type BrokenBound, brokenBound } from './bounds.js';
export { checkRuleSet } from './check-rule-set.js';
export type { CoefficientShape } from './coefficient-table.js';
export { coefficientTable, isLessConservative } from './coefficient-table.js';
export { type Coefficient, coefficientsOf, numbersIn, type PlacedRule, patternOf, rulesOf } from './coefficients.js';
export { confirmedRules } from './confirm.js';
export { differencesFrom, type RuleDifference, type RuleValue } from './differences.js';
export { iso24817 } from './iso-24817.js';
export { type PracticeValue, practice } from './practice.js';
export { type Confirmation, type ConfirmedValue, isKnown, type Rule, type UnknownRule } from './rule.js';
export type {
  ByClass,
  ClassLimits,
  DefaultStrainRow,
  HighRiskLimits,
  Loading,
  PerformanceRow,
  RepairClass,
  RuleSet,
} from './rule-set.js';
export { differingGroups, groupOf, withGroups } from './swap.js';
