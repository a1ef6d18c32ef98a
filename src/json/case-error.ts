import { seen } from '../quantity/plain-text.js';

/** One thing that is wrong with a document. */
export interface CaseIssue {
  /** Where it stands: `defect.profile[3].depth`; empty for the document as a whole. */
  readonly path: string;
  /** What stands there; `undefined` where a field is missing. */
  readonly value: unknown;
  /** What would pass, in words. */
  readonly expected: string;
  /** A value that would pass at this place, where one can be given without knowing the rest of the case. */
  readonly example?: unknown;
  /** All of it as one sentence. */
  readonly message: string;
}

/** What is wrong with a case, or with the arguments of a formula, as text: every issue at once, each a sentence. */
export class CaseError extends Error {
  /** Tells the class across copies of this library. */
  override readonly name = 'CaseError';
  /** Every fault of the document. */
  readonly issues: readonly CaseIssue[];

  constructor(issues: readonly CaseIssue[]) {
    const more = issues.length - MOST;
    const said = issues.slice(0, MOST).map((issue) => issue.message);
    super((more > 0 ? [...said, `and ${more} more, ${issues.length} in all`] : said).join('\n'));
    this.issues = issues;
  }
}

/** Issues that the message says; all of them are in `issues`. */
const MOST = 20;

/**
 * Whether a caught value is a `CaseError`, also one thrown by another copy of this library.
 *
 * @param error whatever was caught
 */
export function isCaseError(error: unknown): error is CaseError {
  return error instanceof Error && error.name === 'CaseError' && 'issues' in error;
}

/** A value as it stands in a sentence: as JSON, cut where it is long. */
export function shown(value: unknown): string {
  const text = seen(asText(value));
  return text.length > 80 ? `${text.slice(0, 77)}...` : text;
}

function asText(value: unknown): string {
  if (typeof value === 'number' || typeof value === 'bigint' || value === undefined) return String(value);
  try {
    return JSON.stringify(value) ?? typeof value;
  } catch {
    return `a ${typeof value} that cannot be written as JSON`;
  }
}
