export {
  type ClaimedStep,
  checkHandCalculation,
  checkSheet,
  type HandCheck,
  type SheetCheck,
  type StepCheck,
} from './check/index.js';
export { type Evaluated, evaluate } from './evaluate.js';
export type { EvaluateOptions } from './options.js';
export { type InputColumns, type OverColumns, overColumns, type RowAnswer } from './over-columns.js';
export { findFormulas } from './search.js';
export { type Typeset, typesetEquation } from './typeset.js';
