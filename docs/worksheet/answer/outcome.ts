import { isCalculationError } from '../../../src/formula/index.js';
import { type DecodedCase, decodeCase, isCaseError } from '../../../src/json/index.js';
import { designRepair, type RepairDesign } from '../../../src/repair/index.js';
import { labelOf, type Refusal, refusalOf } from '../case/refusal.js';

/** What became of a case. */
export type Outcome =
  | { readonly sort: 'empty' }
  /** What came in is no document at all, as a link that was cut short. */
  | { readonly sort: 'unread'; readonly message: string }
  /** The case cannot be read: where, and what would pass. */
  | { readonly sort: 'refused'; readonly refusals: readonly Refusal[] }
  /** A fault of this page or of the library: nothing may be believed then. */
  | { readonly sort: 'fault'; readonly message: string }
  | { readonly sort: 'answered'; readonly design: RepairDesign; readonly decoded: DecodedCase };

/** Takes a document through the JSON door, as any text from elsewhere, and designs what comes out. */
export function outcomeOf(document: unknown): Outcome {
  if (typeof document === 'object' && document !== null && Object.keys(document).length === 0) return { sort: 'empty' };
  try {
    const decoded = decodeCase(document);
    return { sort: 'answered', design: designRepair(decoded.case, { record: true }), decoded };
  } catch (error) {
    if (isCaseError(error)) return { sort: 'refused', refusals: error.issues.map((issue) => refusalOf(issue)) };
    if (isCalculationError(error)) {
      const { parameter: path, message } = error;
      return { sort: 'refused', refusals: [{ path, label: labelOf(path), text: message, isUnfilled: false }] };
    }
    return { sort: 'fault', message: error instanceof Error ? error.message : String(error) };
  }
}
