/**
 * `hoopwright/formulas`: the declarations of all formulas and the sources that they name, one call for a formula by its
 * name, also over columns, the check of a hand calculation and of a sheet of them, its typeset equation, and the search for it.
 *
 * @module
 */
export {
  type ClaimedStep,
  checkHandCalculation,
  checkSheet,
  type Evaluated,
  type EvaluateOptions,
  evaluate,
  findFormulas,
  type HandCheck,
  type InputColumns,
  type OverColumns,
  overColumns,
  type RowAnswer,
  type SheetCheck,
  type StepCheck,
  type Typeset,
  typesetEquation,
} from './evaluate/index.js';
export type {
  AnyFormula,
  Branch,
  ColumnKind,
  Definition,
  Equation,
  Evidence,
  Formula,
  InputDeclaration,
  InputKind,
  Limit,
  OutputDeclaration,
  RowSums,
  Source,
  SourceKey,
  SourceReference,
  SourceTag,
  Winner,
} from './formula/index.js';
export { sources, sourceTags, weakest } from './formula/index.js';
export { formulaById, formulaOf, formulas } from './registry/index.js';
