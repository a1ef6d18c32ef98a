import type { Kind } from '../../quantity/index.js';
import { wordOf } from './admit.js';
import type { AmountField, Field, Fields } from './table-field.js';

/** How a quantity is given at a door: "in m", "as text with a unit". */
type Form = (kind: Kind) => string;

/** What a field takes, in words. */
export function expectedOf(field: Field, form: Form): string {
  const expected = plainly(field, form);
  return field.none === true ? `${expected}, or "none"` : expected;
}

function plainly(field: Field, form: Form): string {
  switch (field.kind) {
    case 'block':
      return `an object with ${namesOf(field.fields)}`;
    case 'variants':
      return `an object with ${field.by}, ${expectedOf(wordOf(field), form)}, and what belongs to it`;
    case 'either':
      return field.shapes.map((shape) => expectedOf(shape, form)).join(', or ');
    case 'list': {
      const { least = 0, row } = field;
      if (row.kind === 'choice') return `a list of ${quoted(row.words)}`;
      return `a list of ${least > 1 ? `at least ${least} rows` : 'at least one row'}, each ${expectedOf(row, form)}`;
    }
    case 'choice':
      return field.words.length > 1 ? `one of ${quoted(field.words)}` : quoted(field.words);
    case 'flag':
      return 'true or false';
    case 'text':
      return 'one line of text that is not empty';
    case 'name':
      return 'text or a number';
    case 'clock':
      return 'a time of day from "00:00" to "23:59"';
    default:
      return amountInWords(field, form);
  }
}

function amountInWords(field: AmountField, form: Form): string {
  const { kind } = field;
  const bounds = boundsInWords(field);
  if (kind === 'count') return `a whole number, ${field.from} or above`;
  if (kind === 'number') return `a plain number ${bounds}`.trimEnd();
  const called = `${/^[aeiou]/u.test(kind) ? 'an' : 'a'} ${kind}`;
  return `${bounds === '' ? called : `${called} ${bounds.replace(/^at/u, 'of at')}`} ${form(kind)}`;
}

/** "above 0", "at least 0 and below 1". */
export function boundsInWords({ kind, above, from, below, to }: AmountField): string {
  const parts: string[] = [];
  if (above !== undefined) parts.push(kind === 'temperature' ? 'above absolute zero' : `above ${above}`);
  if (from !== undefined) parts.push(`at least ${from}`);
  if (below !== undefined) parts.push(`below ${below}`);
  if (to !== undefined) parts.push(`at most ${to}`);
  return parts.join(' and ');
}

/** The fields that must be there; where none must, all. */
function namesOf(fields: Fields): string {
  const needed = Object.entries(fields).flatMap(([name, { optional }]) => (optional === true ? [] : [name]));
  return needed.join(', ') || Object.keys(fields).join(', ') || 'nothing else';
}

function quoted(words: readonly (string | number)[]): string {
  return words.map((word) => JSON.stringify(word)).join(', ');
}
