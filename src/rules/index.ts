export { asmePcc2 } from './asme-pcc-2.js';
export { iso24817 } from './iso-24817.js';
export { type PracticeValue, practice } from './practice.js';
export { isKnown, type Rule, type UnknownRule } from './rule.js';
export type {
  ClassLimits,
  DefaultStrainRow,
  HighRiskLimits,
  Loading,
  PerformanceRow,
  RepairClass,
  RuleSet,
} from './rule-set.js';
