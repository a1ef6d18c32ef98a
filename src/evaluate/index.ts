export { checkHandCalculation, type HandCheck } from './check/index.js';
export { type Evaluated, evaluate } from './evaluate.js';
export type { EvaluateOptions } from './options.js';
export { findFormulas } from './search.js';
export { type Typeset, typesetEquation } from './typeset.js';
