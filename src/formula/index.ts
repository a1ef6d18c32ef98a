export { type Attempt, attempt } from './attempt.js';
export {
  CalculationError,
  type CalculationErrorCode,
  inWords,
  isCalculationError,
  type Refusal,
  refuse,
} from './calculation-error.js';
export {
  type AnyFormula,
  type Branch,
  type ColumnKind,
  type Definition,
  type Equation,
  type Formula,
  formula,
  type InputDeclaration,
  type InputKind,
  type Limit,
  type OutputDeclaration,
  type RowSums,
  type SourceReference,
  type Winner,
} from './declaration.js';
export { type Evidence, type SourceTag, sourceTags, weakest } from './evidence.js';
export {
  atLeast,
  atMost,
  below,
  finite,
  listOfRows,
  nonNegative,
  oneOf,
  positive,
  properFraction,
  wholeNumber,
  within,
} from './guards.js';
export {
  createRecorder,
  decide,
  heading,
  type RecordedDecision,
  type RecordedEntry,
  type RecordedHeading,
  type RecordedStep,
  type Recorder,
  step,
} from './recorder.js';
export { type Source, type SourceKey, sources } from './sources.js';
