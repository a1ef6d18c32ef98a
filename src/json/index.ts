export { CaseError, type CaseIssue, isCaseError } from './case-error.js';
export { caseJsonSchema } from './case-json-schema.js';
export { type CaseText, caseSchema } from './case-schema.js';
export { type DecodedCase, decodeCase, parseCase } from './decode-case.js';
export { type CaseToEncode, encodeCase, writeCase } from './encode-case.js';
export { echo, type Typed, type TypedMap } from './typed.js';
