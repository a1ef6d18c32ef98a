import type { Kind } from './quantity.js';

/** A number for people: what it is, its kind, its value in the coherent SI unit. */
export interface Amount {
  /** What it is, in a few words. */
  readonly name: string;
  /** Kind of the quantity, a plain number or a count. */
  readonly kind: Kind | 'number' | 'count';
  /** In the coherent SI unit of its kind. */
  readonly value: number;
  /** Which way it is rounded when it is written: `up` for what must be reached, `down` for what must not be passed. */
  readonly toward?: 'up' | 'down';
  /** What it is set or weighed on, where people read it from a tool: it is written no finer than the tool shows it. */
  readonly on?: Tool;
}

/** A torque wrench, or a scale that shows steps of so many kilograms or finer. */
export type Tool =
  | 'torque wrench'
  | {
      /** The step that the scale shows [kg]. */
      readonly scale: number;
    };

/**
 * A sentence whose numbers are not part of its text: `{0}`, `{1}` stand for its amounts, and whoever writes it puts them
 * into the reader's units. Every text of a design that holds a quantity is one.
 */
export interface Line {
  /** The sentence, `{0}` for the first amount. */
  readonly text: string;
  /** The amounts in the order of their marks; absent where there is none. */
  readonly amounts?: readonly Amount[];
}

/**
 * A sentence with its amounts in order of `{0}`, `{1}`.
 *
 * @param text with a mark `{0}`, `{1}` for each amount
 * @param amounts in the order of the marks
 */
export function line(text: string, ...amounts: readonly Amount[]): Line {
  return { text, amounts };
}

/**
 * An amount that is as it is.
 *
 * @param name what it is, in a few words
 * @param kind of the quantity, or a plain number or count
 * @param value in SI
 */
export function exactly(name: string, kind: Amount['kind'], value: number): Amount {
  return { name, kind, value };
}

/**
 * An amount that must be reached: written rounded up.
 *
 * @param name what it is, in a few words
 * @param kind of the quantity, or a plain number or count
 * @param value in SI
 */
export function roundedUp(name: string, kind: Amount['kind'], value: number): Amount {
  return { name, kind, value, toward: 'up' };
}

/**
 * An amount that must not be passed: written rounded down.
 *
 * @param name what it is, in a few words
 * @param kind of the quantity, or a plain number or count
 * @param value in SI
 */
export function roundedDown(name: string, kind: Amount['kind'], value: number): Amount {
  return { name, kind, value, toward: 'down' };
}

/**
 * A mass that is weighed out: written to the nearest step of the scale, since neither side of a mixing ratio is safe.
 *
 * @param name what it is, in a few words
 * @param mass in kg
 * @param scale step that the scale shows [kg]
 */
export function weighed(name: string, mass: number, scale: number): Amount {
  return { name, kind: 'mass', value: mass, on: { scale } };
}

/**
 * A torque that must be reached: written as the next step of a wrench.
 *
 * @param name what it is, in a few words
 * @param moment in N m
 */
export function torqued(name: string, moment: number): Amount {
  return { name, kind: 'moment', value: moment, toward: 'up', on: 'torque wrench' };
}

/**
 * A text that speaks one sentence within another: `say` gets its text, and its amounts go with it.
 *
 * @param said the sentence that is spoken within the other
 * @param say gives the whole text from its text
 */
export function saidIn(said: Line, say: (text: string) => string): Line {
  const text = say(said.text);
  return said.amounts === undefined ? { text } : { text, amounts: said.amounts };
}

/**
 * Several sentences as one, each mark counted on by the amounts before it.
 *
 * @param lines in order
 * @param between what stands between two of them
 */
export function joinLines(lines: readonly Line[], between: string): Line {
  const amounts: Amount[] = [];
  const texts = lines.map(({ text, amounts: own = [] }) => {
    const before = amounts.length;
    amounts.push(...own);
    return text.replaceAll(MARK, (_, index: string) => `{${before + Number(index)}}`);
  });
  const text = texts.join(between);
  return amounts.length === 0 ? { text } : { text, amounts };
}

/**
 * A sentence with each amount as `write` puts it.
 *
 * @param said the sentence with its amounts
 * @param write gives the text of an amount, with its unit
 */
export function written({ text, amounts = [] }: Line, write: (amount: Amount) => string): string {
  return text.replaceAll(MARK, (mark, index: string) => {
    const amount = amounts[Number(index)];
    return amount === undefined ? mark : write(amount);
  });
}

const MARK = /\{(\d+)\}/gu;
