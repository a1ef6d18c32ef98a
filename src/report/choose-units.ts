import { dimensions } from '../quantity/dimensions.js';
import { siSymbol, unitOf } from '../quantity/index.js';
import { type CoherentUnits, coherentSets, siUnits } from './coherent.js';
import { type Scope, withDefinitions } from './equation.js';
import { evaluate, type Value } from './evaluate.js';
import type { Expression } from './expression.js';
import type { Problem, Term } from './problem.js';
import { numberIn } from './units.js';

/** The number that a term stands for when its kind is counted in the unit of the set. */
export function valueIn({ kind, value }: Term, set: CoherentUnits): Value {
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

/** The ratio of the two sides of each comparison in a condition, which no change of units may change. */
function sideRatios(condition: Expression, scope: Scope): number[] {
  if (condition.sort === 'unary') return sideRatios(condition.operand, scope);
  if (condition.sort !== 'binary') return [];
  if (condition.operator === 'and' || condition.operator === 'or')
    return [...sideRatios(condition.left, scope), ...sideRatios(condition.right, scope)];
  const [left, right] = [evaluate(condition.left, scope), evaluate(condition.right, scope)];
  return typeof left === 'number' && typeof right === 'number' && right !== 0 ? [left / right] : [];
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
  const si = Object.fromEntries(terms.map(({ symbol, value }) => [symbol, value]));
  for (const { expression } of equation.asked) {
    const ratios = sideRatios(expression, scope);
    if (!sideRatios(expression, si).every((ratio, index) => near(ratio, ratios[index] ?? Number.NaN))) return false;
  }
  if (equation.sort === 'residual') {
    const root = valueIn(result, set) as number;
    const side = (x: number): number => Math.sign(evaluate(equation.main, { ...scope, [result.symbol]: x }) as number);
    return side(root * (1 - 1e-6)) !== side(root * (1 + 1e-6));
  }
  const expected = valueIn({ ...result, value: evaluate(equation.main, si) }, set);
  return near(evaluate(equation.main, scope), expected);
}

/** The units wanted, as far as numbers can be multiplied in them at all: no degrees Celsius, no per cent. */
function wantedUnits({ wanted }: Problem): CoherentUnits {
  return Object.fromEntries(
    [...wanted].map(([kind, symbol]) => {
      const plain = Object.keys(dimensions[kind]).length === 0 || unitOf(kind, symbol)?.[2] !== undefined;
      return [kind, plain ? siSymbol(kind) : symbol];
    }),
  );
}

/** The same problem with every given number moved a little, each by another share, so that no agreement is by chance. */
function moved(problem: Problem): Problem {
  const { equation, terms, result } = problem;
  const given = terms.map((term, index) =>
    term.sort === 'given' && typeof term.value === 'number'
      ? { ...term, value: term.value === 0 ? 1 : term.value * (1 + 0.013 * (index + 1)) }
      : term,
  );
  const values = withDefinitions(
    Object.fromEntries(given.map(({ symbol, value }) => [symbol, value])),
    equation.definitions,
  );
  return {
    ...problem,
    terms: given.map((term) => ({ ...term, value: values[term.symbol] ?? term.value })),
    result: { ...result, value: evaluate(equation.main, values) as number },
  };
}

/**
 * The units of a step: those wanted when the equation holds in them as they stand (a ratio of two moduli may stay in GPa),
 * else the coherent set that keeps most of them, else SI.
 */
export function unitsFor(problem: Problem, tied: boolean): CoherentUnits {
  if (tied) return siUnits(problem.wanted.keys());
  const wanted = wantedUnits(problem);
  if (problem.equation.sort === 'expression' && holdsIn(problem, wanted) && holdsIn(moved(problem), wanted))
    return wanted;
  return coherentSets(problem.wanted).find((each) => holdsIn(problem, each)) ?? siUnits(problem.wanted.keys());
}
