import type { AnyFormula, Definition, Equation } from '../formula/index.js';
import { evaluate, type Value } from './evaluate.js';
import { type Expression, namesIn, parseExpression } from './expression.js';

export type Scope = Readonly<Record<string, Value>>;

export interface ParsedDefinition {
  readonly symbol: string;
  readonly kind: Definition['kind'];
  readonly expression: Expression;
}

/** A condition that was asked on the way to the branch that was taken. */
export interface AskedCondition {
  readonly expression: Expression;
  readonly holds: boolean;
}

/** The equation that this very input meets: of a piecewise formula, the branch taken. */
export interface MetEquation {
  readonly sort: 'expression' | 'residual';
  readonly definitions: readonly ParsedDefinition[];
  readonly asked: readonly AskedCondition[];
  readonly main: Expression;
}

function parsed({ symbol, kind, expression }: Definition): ParsedDefinition {
  return { symbol, kind, expression: parseExpression(expression) };
}

/** The scope with the value of each definition added, in order. */
export function withDefinitions(scope: Scope, definitions: readonly ParsedDefinition[]): Scope {
  const full: Record<string, Value> = { ...scope };
  for (const { symbol, expression } of definitions) full[symbol] = evaluate(expression, full);
  return full;
}

/** Only the definitions that the equation taken, and the conditions asked on the way, make use of. */
function pruned(equation: MetEquation): MetEquation {
  const needed = new Set([equation.main, ...equation.asked.map(({ expression }) => expression)].flatMap(namesIn));
  const definitions = equation.definitions.toReversed().filter(({ symbol, expression }) => {
    if (!needed.has(symbol)) return false;
    for (const name of namesIn(expression)) needed.add(name);
    return true;
  });
  return { ...equation, definitions: definitions.toReversed() };
}

/** The equation that a formula, or the winning row of one, states for this input; nothing when it states an algorithm. */
export function equationMet(
  { id, equation }: { readonly id: AnyFormula['id']; readonly equation: Equation },
  scope: Scope,
): MetEquation | undefined {
  if ('algorithm' in equation) return undefined;
  const shared = (equation.where ?? []).map(parsed);
  if ('expression' in equation)
    return pruned({ sort: 'expression', definitions: shared, asked: [], main: parseExpression(equation.expression) });
  if ('residual' in equation)
    return pruned({ sort: 'residual', definitions: shared, asked: [], main: parseExpression(equation.residual) });

  const known = withDefinitions(scope, shared);
  const asked: AskedCondition[] = [];
  for (const { when, where = [], expression } of equation.branches) {
    if (when !== undefined) {
      const condition = parseExpression(when);
      const holds = evaluate(condition, known) === true;
      asked.push({ expression: condition, holds });
      if (!holds) continue;
    }
    return pruned({
      sort: 'expression',
      definitions: [...shared, ...where.map(parsed)],
      asked,
      main: parseExpression(expression),
    });
  }
  throw new Error(`${id}: no branch of the declared equation holds for this input`);
}
