/**
 * `hoopwright/compare`: one case by two rule sets, each difference by the rule that makes it. Written by `npm run contents`.
 *
 * @module
 */
export {
  type ComparedBases,
  type ComparedNumber,
  type ComparedOutcome,
  compareBases,
  type GroupSwap,
  type Outcome,
  type OutcomeName,
  outcomeOf,
  outcomesOf,
  pressureOf,
} from './compare/index.js';
