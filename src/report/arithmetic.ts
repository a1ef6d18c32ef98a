import { formatNumber } from '../quantity/format.js';
import { unitsFor, valueIn } from './choose-units.js';
import type { CoherentUnits } from './coherent.js';
import type { Scope } from './equation.js';
import { evaluate, type Value } from './evaluate.js';
import type { Expression } from './expression.js';
import { withoutNoise, withoutZeros } from './noise.js';
import { formatGiven, halfUnit, rounds } from './number.js';
import type { Problem, Term } from './problem.js';
import { type Substitute, substitute, type Times } from './substitute.js';
import { unitText } from './units.js';

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
  /** The two sides worked out, where there is something to work out. */
  readonly sides?: string | undefined;
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
  /** The unit of each kind that was wanted. */
  readonly wanted: Problem['wanted'];
  /** Each symbol as it stands in the substituted lines. */
  readonly printed: ReadonlyMap<string, Substitute>;
  /** Significant digits of the numbers computed on the way. */
  readonly carried: number;
  /** Whether the printed numbers give the printed result within its rounding. */
  readonly closes: boolean;
  /** For an equation solved by iteration: its left side, half a printed digit below and above the result. */
  readonly signChange?: readonly [SolvedSide, SolvedSide];
}

export interface SolvedSide {
  readonly at: string;
  readonly leftSide: string;
}

function unitIn({ kind }: Term, set: CoherentUnits): string | undefined {
  return kind === undefined ? undefined : unitText(set[kind] ?? '1');
}

/** How many digits a printing keeps: of numbers given, of numbers computed on the way, of the result. */
interface Digits {
  readonly given: number;
  readonly carried: number;
  readonly result: number;
}

type Printed = ReadonlyMap<string, Substitute>;

/**
 * Prints every term. A number given is in full where that is short. A number computed on the way is what the printed
 * numbers before it give, since that is what a reader gets who follows on paper.
 */
function print({ terms, equation }: Problem, set: CoherentUnits, digits: Digits): Printed {
  const expressions = new Map(equation.definitions.map(({ symbol, expression }) => [symbol, expression]));
  const printed = new Map<string, Substitute>();
  const scope: Record<string, Value> = {};
  for (const term of terms) {
    const { symbol, sort } = term;
    const expression = expressions.get(symbol);
    const value = expression === undefined ? valueIn(term, set) : evaluate(expression, scope);
    const text = textOf(value, sort, digits);
    printed.set(symbol, { text, unit: typeof value === 'number' ? unitIn(term, set) : undefined });
    scope[symbol] = typeof value === 'number' ? Number(text) : value;
  }
  return printed;
}

function textOf(value: Value, sort: Term['sort'], { given, carried, result }: Digits): string {
  if (typeof value === 'string') return `"${value}"`;
  if (typeof value === 'boolean' || sort === 'count') return String(value);
  if (sort === 'computed') return formatNumber(value, carried);
  return formatGiven(value, given, Math.max(given, result + 2));
}

/** The printed numbers, read back as a reader would. */
function readBack({ terms }: Problem, printed: Printed): Scope {
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

/** Whether the printed numbers take the same branch, stay near the true ones and give the printed result. */
function closes(problem: Problem, set: CoherentUnits, printed: Printed, result: string, digits: number): boolean {
  const { equation, terms } = problem;
  const scope = readBack(problem, printed);
  if (!equation.asked.every(({ expression, holds }) => evaluate(expression, scope) === holds)) return false;
  const stray = terms.some((term) => {
    const [shown, value] = [scope[term.symbol], valueIn(term, set)];
    if (typeof shown !== 'number' || typeof value !== 'number') return false;
    return !(Math.abs(shown - value) <= 2 * halfUnit(String(value), digits));
  });
  if (stray) return false;
  if (equation.sort === 'expression') {
    const value = evaluate(equation.main, scope);
    // A count is exact: sixteen digits stand for all of them.
    return typeof value === 'number' && rounds(result, value, problem.result.sort === 'count' ? 16 : digits);
  }
  const [low, high] = sidesOf(problem, scope, result, digits);
  return low !== undefined && high !== undefined && low[1] * high[1] <= 0;
}

/** Both sides of a comparison worked out, unless both are bare numbers already. */
function sidesText(condition: Expression, scope: Scope, digits: number): string | undefined {
  if (condition.sort !== 'binary') return undefined;
  const { left, right } = condition;
  if ([left, right].every(({ sort }) => sort === 'name' || sort === 'number')) return undefined;
  const sides = [evaluate(left, scope), evaluate(right, scope)];
  if (!sides.every((side) => typeof side === 'number')) return undefined;
  return sides.map((side) => formatNumber(side, digits)).join(' against ');
}

/** Adds digits until the arithmetic closes. */
function closing(problem: Problem, set: CoherentUnits, digits: number, result: string) {
  for (let carried = digits; carried <= 15; carried++) {
    for (const given of [carried, carried + 1, carried + 2]) {
      const printed = print(problem, set, { given, carried, result: digits });
      if (closes(problem, set, printed, result, digits)) return { printed, carried, closes: true };
    }
  }
  const printed = print(problem, set, { given: digits, carried: digits, result: digits });
  return { printed, carried: digits, closes: false };
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
  const set = unitsFor(problem, tied);
  const number = valueIn(result, set) as number;
  const text = result.sort === 'count' ? String(number) : formatNumber(number, digits);
  const { printed, carried, closes: closed } = closing(problem, set, digits, text);
  const shown: Substitute = { text, unit: unitIn(result, set) };
  const lookup = (symbol: string): Substitute | undefined =>
    printed.get(symbol) ?? (equation.sort === 'residual' && symbol === result.symbol ? shown : undefined);
  const write = (expression: typeof equation.main) => ({
    symbols: substitute(withoutNoise(expression), undefined, times),
    numbers: substitute(
      withoutZeros(withoutNoise(expression), (symbol) => Number(lookup(symbol)?.text) === 0),
      lookup,
      times,
    ),
  });
  const sides = equation.sort === 'residual' ? sidesOf(problem, readBack(problem, printed), text, digits) : [];
  const [low, high] = sides.map(
    ([at, side]): SolvedSide => ({ at: formatGiven(at, 15, 15), leftSide: formatNumber(side, 3) }),
  );
  return {
    sort: equation.sort,
    conditions: equation.asked.map(({ expression, holds }) => ({
      ...write(expression),
      sides: sidesText(expression, readBack(problem, printed), digits),
      holds,
    })),
    definitions: equation.definitions.map(({ symbol, expression }) => ({
      symbol,
      ...write(expression),
      result: printed.get(symbol) ?? { text: '' },
    })),
    main: { symbol: result.symbol, ...write(equation.main), result: shown },
    units: set,
    wanted: problem.wanted,
    printed,
    carried,
    closes: closed,
    ...(low !== undefined && high !== undefined ? { signChange: [low, high] } : {}),
  };
}
