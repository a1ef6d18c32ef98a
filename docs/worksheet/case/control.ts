import type { Kind } from '../../../src/quantity/index.js';

/** Whether something must be entered: the case cannot be read without it, its numbers wait for it, its verdict does, or nothing. */
export type Must = 'required' | 'for numbers' | 'to sign' | 'optional';

interface AnyControl {
  /** The place in the case, as the door writes it. */
  readonly path: string;
  readonly label: string;
  /** What it is, in a sentence. */
  readonly says: string;
  readonly must: Must;
}

/** What is typed or chosen in one place. */
interface Leaf extends AnyControl {
  /** An empty text stays in the case, since the choice above says that there is a value. */
  readonly keepsPlace: boolean;
  /** As a text that a reader may type: "219.1 mm". */
  readonly example: string;
}

/** A quantity: a number and the unit that the reader chooses. */
export interface AmountControl extends Leaf {
  readonly sort: 'amount';
  readonly kind: Kind;
  readonly number: string;
  readonly unit: string;
  readonly units: readonly string[];
  /** The span of real jobs in the unit chosen, or in that of the example. */
  readonly usual: string;
}

/** A number without a unit, a line of text, a time of day. */
export interface TextControl extends Leaf {
  readonly sort: 'number' | 'text' | 'name' | 'clock';
  readonly text: string;
  readonly usual: string;
}

/** One of several words. */
export interface ChoiceControl extends Leaf {
  readonly sort: 'choice';
  readonly options: readonly { readonly value: unknown; readonly words: string }[];
  /** What stands there, as text; no option where it is none of them. */
  readonly text: string;
}

/** Any of several words, or the statement that somebody looked and found none. */
export interface TicksControl extends AnyControl {
  readonly sort: 'ticks';
  readonly options: readonly (string | number)[];
  readonly ticked: readonly unknown[];
  readonly isNone: boolean;
}

/** One way in which a field may be given, and what stands there at first when it is chosen. */
export interface Way {
  readonly name: string;
  readonly start: unknown;
}

/** A field that may be given in several ways, with the controls of the way that was chosen. */
export interface WaysControl extends AnyControl {
  readonly sort: 'ways';
  readonly ways: readonly Way[];
  /** Name of the way chosen; empty where none is. */
  readonly chosen: string;
  /** What is given is one value and no block of fields. */
  readonly isValue: boolean;
  readonly inside: readonly Control[];
}

/** Fields that belong together. */
export interface GroupControl extends AnyControl {
  readonly sort: 'group';
  readonly inside: readonly Control[];
}

/** Rows of fields. */
export interface RowsControl extends AnyControl {
  readonly sort: 'rows';
  readonly held: readonly unknown[];
  readonly rows: readonly (readonly Control[])[];
  /** A row to add: empty, in the units of the row above it. */
  readonly start: Readonly<Record<string, unknown>>;
}

export type Control =
  | AmountControl
  | TextControl
  | ChoiceControl
  | TicksControl
  | WaysControl
  | GroupControl
  | RowsControl;
