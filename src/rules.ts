/** `hoopwright/rules`: rule sets as data. Written by `npm run contents`. */
export {
  asmePcc2,
  type ClassLimits,
  type DefaultStrainRow,
  type HighRiskLimits,
  isKnown,
  iso24817,
  type Loading,
  type PerformanceRow,
  type PracticeValue,
  practice,
  type RepairClass,
  type Rule,
  type RuleSet,
  type UnknownRule,
} from './rules/index.js';
