import type { Kind } from '../quantity/index.js';
import { type Side, safeSide } from '../repair/design/safe-side.js';
import { amountOnSheet } from './line-text.js';
import type { ChosenOptions } from './options.js';

/** A number of the answer as the reader sees it, by what it is and its name: never to the side that would let more pass. */
export type Show = (kind: Kind | 'number' | 'count', name: string, value: number, toward?: Side) => string;

/** Writes the numbers of an answer, each to its safe side. */
export function showSafely(options: ChosenOptions): Show {
  return (kind, name, value, toward = safeSide(name)) =>
    amountOnSheet(toward === undefined ? { kind, name, value } : { kind, name, value, toward }, options, true);
}
