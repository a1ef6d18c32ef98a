import { documentWordsAt } from '../../../src/json/document-table.js';
import type { CaseIssue } from '../../../src/json/index.js';
import { isUnfilled } from './amount-text.js';

/** Why a case is not designed, at the place where it is to be mended. */
export interface Refusal {
  readonly path: string;
  /** What the place is called on the form. */
  readonly label: string;
  readonly text: string;
  /** Nothing is wrong there, but nothing has been entered yet. */
  readonly isUnfilled: boolean;
}

/** An issue of the door, as it stands beside its field. */
export function refusalOf({ path, value, expected, example, message }: CaseIssue, label = labelOf(path)): Refusal {
  const unfilled = isUnfilled(value) && !/ is left out; /u.test(message);
  if (unfilled) return { path, label, text: `${wanted(expected)}${such(example)}.`, isUnfilled: true };
  const said = path !== '' && message.startsWith(path) ? `${label}${message.slice(path.length)}` : message;
  return { path, label, text: said.replace(/([^.?!])$/u, '$1.'), isUnfilled: false };
}

/** The word of the form for a place; for a place that the form does not know, the place itself. */
export function labelOf(path: string): string {
  try {
    return documentWordsAt(path)[0];
  } catch {
    return path;
  }
}

function wanted(expected: string): string {
  if (expected.startsWith('an object')) return `Still to fill in${expected.endsWith('or "none"') ? ', or none' : ''}`;
  return `Give ${expected.replaceAll(' as text with a unit', '').replaceAll('one line of text that is not empty', 'one line of text')}`;
}

function such(example: unknown): string {
  return example === undefined || typeof example === 'object' ? '' : `, such as ${String(example)}`;
}
