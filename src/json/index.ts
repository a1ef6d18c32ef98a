export { CaseError, type CaseIssue, isCaseError } from './case-error.js';
export { type CaseField, caseFields } from './case-fields.js';
export { caseJsonSchema } from './case-json-schema.js';
export { type DecodedCase, decodeCase, parseCase } from './decode-case.js';
export type { CaseText } from './document-table.js';
export {
  type AmountOptions,
  type Declared,
  type EncodedAmount,
  encodeDeclared,
  encodeResults,
} from './encode-amount.js';
export { type CaseToEncode, encodeCase, writeCase } from './encode-case.js';
export { type DesignEncoding, encodeDesign } from './encode-design.js';
export { type EncodedInput, type Evaluation, encodeEvaluation } from './encode-evaluation.js';
export { decodeFormulaInput, type FormulaInput } from './formula-input.js';
export type { LookUp, LookUpField } from './look-up.js';
export { nearMiss } from './near-miss.js';
export { parseRows } from './rows.js';
export { parseRuleSet, writeRuleSet } from './rule-set.js';
export { echo, echoes, isAmbiguous, type Typed, type TypedMap } from './typed.js';
