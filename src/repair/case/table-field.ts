import type { Kind, Quantity } from '../../quantity/index.js';

/** What every field of a case may say of itself. A field is required unless it says otherwise. */
interface AnyField {
  readonly optional?: true;
  /** Optional at the doors, and yet the numbers wait for it, or the verdict `designed` does while the numbers stand. */
  readonly needed?: 'for numbers' | 'to sign';
  /** The word `none` may stand in its place: for what must be stated even where there is none of it. */
  readonly none?: true;
}

export type Span = readonly [least: number, most: number];

/** A number: a quantity in its coherent SI unit, a plain number, or a count. */
export interface AmountField extends AnyField {
  readonly kind: Kind | 'number' | 'count';
  /** Hard bounds: what lies outside them can never be right. */
  readonly above?: number;
  readonly from?: number;
  readonly below?: number;
  readonly to?: number;
  /** Where the values of real jobs lie: what lies outside it may be right, and more often is a slip of unit or factor. */
  readonly usual?: Span;
}

/** One of several words, or of several numbers that stand for a word. */
export interface ChoiceField extends AnyField {
  readonly kind: 'choice';
  readonly words: readonly (string | number)[];
}

/** True or false; one line of text that is not empty; a name that is often a number; a time of day on the clock of the site, as `07:30`. */
export interface PlainField extends AnyField {
  readonly kind: 'flag' | 'text' | 'name' | 'clock';
}

export interface ListField extends AnyField {
  readonly kind: 'list';
  readonly least?: number;
  readonly row: Field;
}

export interface BlockField extends AnyField {
  readonly kind: 'block';
  readonly fields: Fields;
  /** Among several shapes: the key by which this one is known. */
  readonly when?: string;
}

/** One of several blocks, told apart by the word at a key of theirs. */
export interface VariantsField extends AnyField {
  readonly kind: 'variants';
  readonly by: string;
  readonly variants: Readonly<Record<string, Fields>>;
}

/**
 * One of several shapes: the first block whose key is there or that needs none, words that are among those of a choice, or
 * the one other shape that is no block.
 */
export interface EitherField extends AnyField {
  readonly kind: 'either';
  readonly shapes: readonly (AmountField | ChoiceField | PlainField | BlockField)[];
}

export type Field = AmountField | ChoiceField | PlainField | ListField | BlockField | VariantsField | EitherField;

export type Fields = Readonly<Record<string, Field>>;

/** The type of what stands in a field, `none` included. */
export type Held<F> = (F extends { readonly none: true } ? 'none' : never) | Plain<F>;

type Plain<F> = F extends { readonly kind: infer K extends Kind }
  ? Quantity<K>
  : F extends { readonly kind: 'number' | 'count' }
    ? number
    : F extends { readonly kind: 'choice'; readonly words: readonly (infer Word)[] }
      ? Word
      : F extends { readonly kind: 'flag' }
        ? boolean
        : F extends { readonly kind: 'text' | 'clock' }
          ? string
          : F extends { readonly kind: 'name' }
            ? string | number
            : F extends { readonly kind: 'list'; readonly row: infer Row }
              ? readonly Held<Row>[]
              : F extends { readonly kind: 'block'; readonly fields: infer Inner }
                ? HeldBy<Inner>
                : F extends {
                      readonly kind: 'variants';
                      readonly by: infer By extends string;
                      readonly variants: infer V;
                    }
                  ? { [Word in keyof V]: { readonly [K in By]: Word } & HeldBy<V[Word]> }[keyof V]
                  : F extends { readonly kind: 'either'; readonly shapes: readonly (infer Shape)[] }
                    ? Plain<Shape>
                    : never;

type OptionalKeys<T> = { [K in keyof T]: T[K] extends { readonly optional: true } ? K : never }[keyof T];

/** The type of an object with these fields. */
export type HeldBy<T> = {
  readonly [K in Exclude<keyof T, OptionalKeys<T>>]: Held<T[K]>;
} & { readonly [K in OptionalKeys<T>]?: Held<T[K]> | undefined };
