import { frozen } from '../numeric/frozen.js';
import type { Kind, KindOf } from '../quantity/index.js';
import type { Evidence } from './evidence.js';
import type { SourceKey } from './sources.js';

/** What an input may be: a quantity by its kind, a plain number, a count, one of some words, a yes or no, or a list of rows. */
export type InputKind = Kind | 'number' | 'count' | 'choice' | 'flag' | 'list';

/** What the column of a list may be. */
export type ColumnKind = Exclude<InputKind, 'list'>;

/** The kind that an input of type `T` must be declared with. */
export type DeclaredKind<T> = T extends boolean
  ? 'flag'
  : T extends number
    ? [KindOf<T>] extends [never]
      ? 'number' | 'count'
      : KindOf<T>
    : T extends string
      ? 'choice'
      : 'list';

/** How a formula declares one of its inputs. */
export interface InputDeclaration<T = unknown> {
  /** Symbol in the expression and on the sheet; Greek letters by name: `sigma_h`, `nu_ca`. */
  readonly symbol: string;
  /** What it is: a kind of quantity, a number, a count, a choice, a flag or a list. */
  readonly kind: DeclaredKind<T>;
  /** What it is, in a few words. */
  readonly name: string;
  /** Span in SI that tests sample: the stated validity, or the part of it that is met on pipes. */
  readonly sample?: readonly [low: number, high: number];
  /** Where it lies on pipes, where the sample is cut short by another input. */
  readonly usual?: readonly [least: number, most: number];
  /** Default in SI, for a constant that callers rarely give. */
  readonly default?: number | string | boolean;
  /** May be left out without a default: what it serves is then not checked. */
  readonly optional?: true;
  /** The words of a choice. */
  readonly choices?: readonly string[];
  /** The columns of a list, as `name: kind`; a list of bare values has one column, `value`. */
  readonly columns?: Readonly<Record<string, ColumnKind>>;
}

/** How a formula declares one of its results. */
export interface OutputDeclaration<T = unknown> {
  /** Symbol in the expression and on the sheet. */
  readonly symbol: string;
  /** What it is: a kind of quantity, a number, a count, a choice, a flag or a list. */
  readonly kind: DeclaredKind<T>;
  /** What it is, in a few words. */
  readonly name: string;
  /** The columns of a list, as `name: kind`. */
  readonly columns?: Readonly<Record<string, ColumnKind>>;
}

/** A quantity that the equation defines on its way, evaluated before the equation itself. */
export interface Definition {
  /** Symbol by which the equation calls it. */
  readonly symbol: string;
  /** Kind of quantity, or a plain number. */
  readonly kind: Kind | 'number';
  /** What it is defined as. */
  readonly expression: string;
}

/** One branch of a piecewise equation; the last branch has no `when`. */
export interface Branch {
  /** Condition under which the branch is taken. */
  readonly when?: string;
  /** The equation of the branch. */
  readonly expression: string;
  /** What is defined for this branch alone. */
  readonly where?: readonly Definition[];
}

/** How a declaration states its equation. */
export type Equation =
  | {
      /** The result as text that an evaluator of expressions reads, over the symbols of the inputs. */
      readonly expression: string;
      /** What the equation defines on its way, in order. */
      readonly where?: readonly Definition[];
    }
  | {
      /** Tried in order: the first whose condition holds gives the result. */
      readonly branches: readonly Branch[];
      /** What the equation defines on its way, in order. */
      readonly where?: readonly Definition[];
    }
  | {
      /** Zero at the result, which stands in it by the output's symbol. */
      readonly residual: string;
      /** What the equation defines on its way, in order. */
      readonly where?: readonly Definition[];
    }
  | {
      /** How the result is found, in words; a brute-force oracle in verification/ is then required. */
      readonly algorithm: string;
      /** The closed equation of the row that was found. */
      readonly winner?: Winner;
    };

/**
 * The row that an algorithm found, by its own closed formula: over the inputs and the results other than the one it gives.
 * It lets a reader check that row, not that no other row is better.
 */
export interface Winner {
  /** Which row it is, in a few words: "the weakest sub-length". */
  readonly name: string;
  /** The closed formula of that row. */
  readonly equation:
    | {
        /** One expression for the row. */
        readonly expression: string;
        /** What the equation defines on its way, in order. */
        readonly where?: readonly Definition[];
      }
    | {
        /** Tried in order: the first whose condition holds. */
        readonly branches: readonly Branch[];
        /** What the equation defines on its way, in order. */
        readonly where?: readonly Definition[];
      };
  /** What the equation gives, where that is not the first result: a column of one row of a list among the results. */
  readonly gives?: {
    /** The list among the results. */
    readonly list: string;
    /** From 1. */
    readonly row: number;
    /** The column of that list. */
    readonly column: string;
    /** Symbol by which the sheet calls it. */
    readonly symbol: string;
  };
  /** Sums that the equation reads, built up row by row over a list. */
  readonly sums?: RowSums;
}

/** Sums over the rows of a list among the inputs. */
export interface RowSums {
  /** The list among the inputs. */
  readonly list: string;
  /** The symbol of each column. The columns of the last row stand in the equation of the winner too. */
  readonly columns: Readonly<Record<string, string>>;
  /** The count among the results that tells the last row, which is no longer summed; all rows are where it is left out. */
  readonly last?: string;
  /** A row that does not meet it adds nothing. */
  readonly when?: string;
  /** What each row gives, over its columns and the inputs. */
  readonly where: readonly Definition[];
  /** What is summed over the rows. */
  readonly sums: readonly {
    /** Symbol by which the equation of the winner calls the sum. */
    readonly symbol: string;
    /** Kind of the sum. */
    readonly kind: Kind | 'number';
    /** What each row adds to it. */
    readonly of: string;
    /** What it is, in a few words. */
    readonly name: string;
  }[];
}

/** A place in a document. */
export interface SourceReference {
  /** Key of the document in `sources`. */
  readonly key: SourceKey;
  /** Clause, page, table or equation. */
  readonly locator: string;
}

/** A limit of validity. A `stop` throws `outside-validity`; a `note` is a warning that `beyond` decides. */
export interface Limit<I> {
  /** Whether it throws or warns. */
  readonly sort: 'stop' | 'note';
  /** The limit in a sentence. */
  readonly text: string;
  /** Whether an input lies beyond it. */
  readonly beyond?: (input: I) => boolean;
  /** Who sets it. */
  readonly source?: SourceReference;
}

/** Everything about an equation that is not the equation: for people, for tests and for reports. */
export interface Formula<I = never, O = unknown> {
  /** Room and name: `pipe/hoop-stress`. */
  readonly id: string;
  /** Title on the sheet. */
  readonly title: string;
  /** Words of the trade that its id, title and inputs do not hold: `barlow`. */
  readonly search?: readonly string[];
  /** The function itself. */
  readonly compute: (input: I) => O;
  /** The equation as text, or its algorithm in words. */
  readonly equation: Equation;
  /** Each input by the name of its field. */
  readonly inputs: { readonly [K in keyof I]-?: InputDeclaration<NonNullable<I[K]>> & MayBeLeftOut<I[K]> };
  /** The result; for a function that returns a record, one declaration for each member, the main one first. */
  readonly output: O extends number | string | boolean
    ? OutputDeclaration<O>
    : { readonly [K in keyof O]: OutputDeclaration<O[K]> };
  /** Where the formula comes from. */
  readonly sources: readonly SourceReference[];
  /** Evidence for the form, and for each coefficient that is not part of the form, by its name. */
  readonly evidence: {
    /** What stands behind the form of the equation. */
    readonly form: Evidence;
  } & Readonly<Record<string, Evidence>>;
  /** Where it ends. */
  readonly limits: readonly Limit<I>[];
  /**
   * Why scaling the base units does not scale the result: for the few empirical formulas that are tied to a unit.
   * Everything else must pass the homogeneity test.
   */
  readonly inhomogeneous?: string;
}

/** What the type lets out has its default, or the word that it may be left out: else a door by name would demand it. */
type MayBeLeftOut<T> = unknown extends T
  ? unknown
  : undefined extends T
    ? { readonly default: number | string | boolean } | { readonly optional: true }
    : { readonly optional?: never };

/** A formula of any input and output, as the registry holds it. */
// biome-ignore lint/suspicious/noExplicitAny: the registry mixes formulas of every input; only `any` is assignable both ways.
export type AnyFormula = Formula<any, any>;

/**
 * Marks a declaration, and closes it: one part of a program could change it for all others. Call it with literals and named
 * functions only, so that bundlers can drop it.
 */
export function formula<I, O>(declaration: Formula<I, O>): Formula<I, O> {
  return frozen(declaration) as Formula<I, O>;
}
