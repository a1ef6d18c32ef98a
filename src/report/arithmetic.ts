import { type CoherentUnits, coherentSets, siUnits } from './coherent.js';
import type { Scope } from './equation.js';
import { evaluate, type Value } from './evaluate.js';
import { formatGiven, formatNumber, halfUnit, rounds } from './number.js';
import type { Problem, Term } from './problem.js';
import { type Substitute, substitute, type Times } from './substitute.js';
import { numberIn, unitText } from './units.js';

/** An equation written out: the symbols, the numbers, the result. */
export interface WrittenEquation {
  /** The symbol left of the equals sign. */
  readonly symbol: string;
  readonly symbols: string;
  /** The numbers, in units in which they can be multiplied as they stand. */
  readonly numbers: string;
  /** The number that this arithmetic gives, and its unit. */
  readonly result: Substitute;
}

export interface WrittenCondition {
  readonly symbols: string;
  readonly numbers: string;
  readonly holds: boolean;
}

/** The arithmetic of a step in numbers that can be followed with pencil and paper. */
export interface Arithmetic {
  readonly sort: 'expression' | 'residual';
  readonly conditions: readonly WrittenCondition[];
  readonly definitions: readonly WrittenEquation[];
  readonly main: WrittenEquation;
  /** The unit of each kind in the substituted lines. */
  readonly units: CoherentUnits;
  /** Each symbol as it stands in the substituted lines. */
  readonly printed: ReadonlyMap<string, Substitute>;
  /** Whether the printed numbers give the printed result within its rounding. */
  readonly closes: boolean;
  /** For an equation solved by iteration: its left side, half a printed digit below and above the result. */
  readonly signChange?: readonly [SolvedSide, SolvedSide];
}

export interface SolvedSide {
  readonly at: string;
  readonly leftSide: string;
}

/** The number that a term stands for when its kind is counted in the unit of the set. */
function valueIn({ kind, value }: Term, set: CoherentUnits): Value {
  const unit = kind === undefined ? undefined : set[kind];
  return kind === undefined || unit === undefined || typeof value !== 'number' ? value : numberIn(kind, value, unit);
}

function near(a: Value, b: Value): boolean {
  if (typeof a !== 'number' || typeof b !== 'number') return a === b;
  return Math.abs(a - b) <= 1e-6 * Math.max(Math.abs(a), Math.abs(b));
}

function scopeIn(problem: Problem, set: CoherentUnits): Scope {
  return Object.fromEntries(problem.terms.map((term) => [term.symbol, valueIn(term, set)]));
}

/** Whether the equation gives in these units what it gives in SI: a pure number that hides a unit shows itself here. */
function holdsIn(problem: Problem, set: CoherentUnits): boolean {
  const { equation, terms, result } = problem;
  const scope = scopeIn(problem, set);
  if (
    !equation.definitions.every(({ symbol, expression }) =>
      near(evaluate(expression, scope), scope[symbol] ?? Number.NaN),
    )
  )
    return false;
  if (equation.sort === 'residual') {
    const root = valueIn(result, set) as number;
    const side = (x: number): number => Math.sign(evaluate(equation.main, { ...scope, [result.symbol]: x }) as number);
    return side(root * (1 - 1e-6)) !== side(root * (1 + 1e-6));
  }
  const si = Object.fromEntries(terms.map(({ symbol, value }) => [symbol, value]));
  const expected = valueIn({ ...result, value: evaluate(equation.main, si) }, set);
  return near(evaluate(equation.main, scope), expected);
}

function unitIn({ kind }: Term, set: CoherentUnits): string | undefined {
  return kind === undefined ? undefined : unitText(set[kind] ?? '1');
}

/** Prints every term: computed numbers with `carried` digits, given ones with `given`, or in full where they are short. */
function print({ terms }: Problem, set: CoherentUnits, given: number, carried: number, digits: number) {
  return new Map(
    terms.map((term): [string, Substitute] => {
      const value = valueIn(term, set);
      const unit = unitIn(term, set);
      if (typeof value !== 'number')
        return [term.symbol, { text: typeof value === 'string' ? `"${value}"` : String(value) }];
      if (term.sort === 'count') return [term.symbol, { text: String(value) }];
      const text =
        term.sort === 'computed'
          ? formatNumber(value, carried)
          : formatGiven(value, given, Math.max(given, digits + 2));
      return [term.symbol, { text, unit }];
    }),
  );
}

/** The printed numbers, read back as a reader would. */
function readBack({ terms }: Problem, printed: ReadonlyMap<string, Substitute>): Scope {
  return Object.fromEntries(
    terms.map(({ symbol, value }) => [symbol, typeof value === 'number' ? Number(printed.get(symbol)?.text) : value]),
  );
}

function sidesOf({ equation, result }: Problem, scope: Scope, text: string, digits: number): [number, number][] {
  return [-1, 1].map((sign) => {
    const at = Number(text) + sign * halfUnit(text, digits);
    return [at, evaluate(equation.main, { ...scope, [result.symbol]: at }) as number];
  });
}

/** A printed problem: each symbol, the result, and how many digits the computed numbers carry. */
interface Print {
  readonly printed: ReadonlyMap<string, Substitute>;
  readonly result: string;
  readonly carried: number;
  readonly digits: number;
}

/** Whether the printed numbers, put through the equation, give the printed results within their rounding. */
function closes(problem: Problem, { printed, result, carried, digits }: Print): boolean {
  const { equation } = problem;
  const scope = readBack(problem, printed);
  const gives = (text: string | undefined, value: Value, kept: number): boolean =>
    text !== undefined && typeof value === 'number' && rounds(text, value, kept);
  if (!equation.asked.every(({ expression, holds }) => evaluate(expression, scope) === holds)) return false;
  if (
    !equation.definitions.every((each) =>
      gives(printed.get(each.symbol)?.text, evaluate(each.expression, scope), carried),
    )
  )
    return false;
  // A count is exact: sixteen digits stand for all of them.
  if (equation.sort === 'expression')
    return gives(result, evaluate(equation.main, scope), problem.result.sort === 'count' ? 16 : digits);
  const [low, high] = sidesOf(problem, scope, result, digits);
  return low !== undefined && high !== undefined && low[1] * high[1] <= 0;
}

/** Adds digits until the arithmetic closes; what is computed on the way may carry fewer than what was given. */
function closing(problem: Problem, set: CoherentUnits, digits: number, result: string) {
  for (let given = digits; given <= 17; given++) {
    for (let carried = Math.min(given, 15); carried >= Math.max(digits, given - 3); carried--) {
      const printed = print(problem, set, given, carried, digits);
      if (closes(problem, { printed, result, carried, digits })) return { printed, closes: true };
    }
  }
  return { printed: print(problem, set, digits, digits, digits), closes: false };
}

/**
 * The arithmetic of a step: units chosen so that the numbers multiply as they stand, and as many digits as it takes for
 * the printed numbers to give the printed result within its rounding.
 *
 * @param problem  what to write out
 * @param digits   significant digits of the result
 * @param tied     the formula is tied to SI units, and no others will do
 */
export function arithmetic(problem: Problem, digits: number, tied = false, times: Times = '*'): Arithmetic {
  const { equation, result } = problem;
  const si = siUnits(problem.wanted.keys());
  const set = tied ? si : (coherentSets(problem.wanted).find((each) => holdsIn(problem, each)) ?? si);
  const number = valueIn(result, set) as number;
  const text = result.sort === 'count' ? String(number) : formatNumber(number, digits);
  const { printed, closes: closed } = closing(problem, set, digits, text);
  const shown: Substitute = { text, unit: unitIn(result, set) };
  const lookup = (symbol: string): Substitute | undefined =>
    printed.get(symbol) ?? (equation.sort === 'residual' && symbol === result.symbol ? shown : undefined);
  const write = (expression: typeof equation.main) => ({
    symbols: substitute(expression, undefined, times),
    numbers: substitute(expression, lookup, times),
  });
  const sides = equation.sort === 'residual' ? sidesOf(problem, readBack(problem, printed), text, digits) : [];
  const [low, high] = sides.map(
    ([at, side]): SolvedSide => ({ at: formatGiven(at, 15, 15), leftSide: formatNumber(side, 3) }),
  );
  return {
    sort: equation.sort,
    conditions: equation.asked.map(({ expression, holds }) => ({ ...write(expression), holds })),
    definitions: equation.definitions.map(({ symbol, expression }) => ({
      symbol,
      ...write(expression),
      result: printed.get(symbol) ?? { text: '' },
    })),
    main: { symbol: result.symbol, ...write(equation.main), result: shown },
    units: set,
    printed,
    closes: closed,
    ...(low !== undefined && high !== undefined ? { signChange: [low, high] } : {}),
  };
}
