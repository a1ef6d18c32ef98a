import { type Kind, readQuantity, unitOf } from '../../../src/quantity/index.js';

/** A quantity in two boxes: its number as typed, and its unit, empty as long as nobody has chosen one. */
export interface AmountBoxes {
  readonly number: string;
  readonly unit: string;
}

const NUMBER =
  /^\s*(?<number>[+-]?(?:(?:\d+(?:\s+|-))?\d+\/\d+|(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?))\s*(?<rest>.*?)\s*$/isu;

/** Stands for the unit that was not chosen, where the door would take a bare number for one. */
const NOT_CHOSEN = '?';

/** The two boxes of a text; what is no number in a unit of the kind stands whole in the first. */
export function boxesOf(kind: Kind, text: string): AmountBoxes {
  if (text.startsWith(' ') && unitOf(kind, text.trim()) !== undefined) return { number: '', unit: text.trim() };
  const { number, rest } = NUMBER.exec(text)?.groups ?? {};
  if (number === undefined) return { number: text, unit: '' };
  if (rest === NOT_CHOSEN) return { number, unit: '' };
  const reading = readQuantity(kind, text);
  return reading.ok ? { number, unit: reading.unit } : { number: text, unit: '' };
}

/** The text of two boxes. A unit that was typed after the number counts for more than the one chosen before. */
export function textOfBoxes(kind: Kind, { number, unit }: AmountBoxes): string {
  const typed = number.trim();
  if (typed === '') return unit === '' ? '' : ` ${unit}`;
  if (NUMBER.exec(typed)?.groups?.['rest'] !== '') return typed;
  if (unit === '') return unitOf(kind, '1') === undefined ? typed : `${typed} ${NOT_CHOSEN}`;
  return unit === '1' ? typed : `${typed} ${unit}`;
}

/** Whether a text holds no number yet. */
export function isUnfilled(value: unknown): boolean {
  return value === undefined || (typeof value === 'string' && (value === '' || value.startsWith(' ')));
}
