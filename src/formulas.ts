/** `hoopwright/formulas`: the declarations of all formulas, and the sources that they name. */
export type { AnyFormula, Equation, Evidence, Formula, Limit, Source, SourceKey, SourceTag } from './formula/index.js';
export { sources, sourceTags, weakest } from './formula/index.js';
export { formulaById, formulaOf, formulas } from './registry/index.js';
