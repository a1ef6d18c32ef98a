export {
  type ComparedBases,
  type ComparedNumber,
  type ComparedOutcome,
  compareBases,
  type GroupSwap,
} from './compare-bases.js';
export { type Outcome, type OutcomeName, outcomeNames, outcomeOf, outcomesOf, pressureOf } from './outcome.js';
