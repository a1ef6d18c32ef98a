import type { AnyFormula, InputDeclaration } from '../../formula/index.js';
import type { FormulaInput } from '../../json/formula-input.js';
import { unitOf } from '../../quantity/index.js';
import { fromSi } from '../../quantity/quantity.js';
import { evaluate, type Value } from '../../report/evaluate.js';
import { type Expression, namesIn, parseExpression } from '../../report/expression.js';

/** Slips in writing the equation down: a square, a root or pi forgotten, a bracket upside down, the wrong logarithm. */

interface ExpressionSlip {
  readonly words: string;
  /** What comes out over what should, in the units of what was typed. */
  readonly factor: number;
}

interface Written {
  readonly words: string;
  readonly expression: Expression;
}

const ONE: Expression = { sort: 'number', text: '1' };

/** The expression with one thing in it written otherwise, each such. */
function otherwise(whole: Expression): Written[] {
  const here: Written[] = [];
  if (whole.sort === 'binary' && whole.operator === '^' && whole.right.sort === 'number')
    here.push({ words: `a power of ${whole.right.text} was forgotten`, expression: whole.left });
  if (whole.sort === 'call' && whole.name === 'sqrt' && whole.args[0] !== undefined)
    here.push({ words: 'a square root was forgotten', expression: whole.args[0] });
  if (whole.sort === 'call' && whole.name === 'log' && whole.args.length === 1)
    here.push({
      words: 'the logarithm to the base of 10 was taken for the natural one',
      expression: { sort: 'binary', operator: '/', left: whole, right: { sort: 'number', text: String(Math.LN10) } },
    });
  if (whole.sort === 'name' && whole.name === 'pi') here.push({ words: 'pi was forgotten', expression: ONE });
  if (whole.sort === 'binary' && whole.operator === '-' && whole.left.sort === 'number' && whole.left.text === '1')
    here.push({
      words: 'a bracket 1 - … was taken upside down',
      expression: { sort: 'binary', operator: '/', left: ONE, right: whole },
    });
  return [...here, ...inside(whole)];
}

function inside(whole: Expression): Written[] {
  if (whole.sort === 'unary')
    return otherwise(whole.operand).map(({ words, expression }) => ({
      words,
      expression: { ...whole, operand: expression },
    }));
  if (whole.sort === 'call')
    return whole.args.flatMap((arg, place) =>
      otherwise(arg).map(({ words, expression }) => ({
        words,
        expression: { ...whole, args: whole.args.with(place, expression) },
      })),
    );
  if (whole.sort !== 'binary') return [];
  return [
    ...otherwise(whole.left).map(({ words, expression }) => ({ words, expression: { ...whole, left: expression } })),
    ...otherwise(whole.right).map(({ words, expression }) => ({ words, expression: { ...whole, right: expression } })),
  ];
}

/** The numbers as they were typed, since a forgotten square is one of the number that stands on the paper. */
function scopeOf(formula: AnyFormula, { input, typed }: FormulaInput): Readonly<Record<string, Value>> {
  const scope: Record<string, Value> = {};
  for (const [key, declared] of Object.entries(formula.inputs as Readonly<Record<string, InputDeclaration>>)) {
    const value = input[key] ?? declared.default;
    const entry = typed[key];
    const unit = entry === undefined ? undefined : unitOf(entry.kind, entry.unit);
    if (typeof value === 'number') scope[declared.symbol] = unit === undefined ? value : fromSi(value, unit);
    else if (typeof value === 'string' || typeof value === 'boolean') scope[declared.symbol] = value;
  }
  return scope;
}

/** Of a formula that is one expression without definitions; of others there is none. */
export function expressionSlips(formula: AnyFormula, given: FormulaInput): ExpressionSlip[] {
  const paper = paperOf(formula, given);
  if (paper === undefined) return [];
  const { tree, scope } = paper;
  const right = evaluate(tree, scope);
  if (typeof right !== 'number' || right === 0) return [];
  return otherwise(tree).flatMap(({ words, expression }) => {
    const slipped = evaluate(expression, scope);
    return typeof slipped === 'number' && Number.isFinite(slipped) ? [{ words, factor: slipped / right }] : [];
  });
}

/** What the equation gives on paper for inputs that the formula refuses, where it is one expression; else no number. */
export function onPaper(formula: AnyFormula, input: Readonly<Record<string, unknown>>): number {
  const paper = paperOf(formula, { input, typed: {} });
  const value = paper === undefined ? undefined : evaluate(paper.tree, paper.scope);
  return typeof value === 'number' ? value : Number.NaN;
}

/** The equation and what stands for its names: where it is one expression without definitions, and each name has a value. */
function paperOf(
  formula: AnyFormula,
  given: FormulaInput,
): { readonly tree: Expression; readonly scope: Readonly<Record<string, Value>> } | undefined {
  const { equation } = formula;
  if (!('expression' in equation) || (equation.where ?? []).length > 0) return undefined;
  const tree = parseExpression(equation.expression);
  const scope = scopeOf(formula, given);
  return namesIn(tree).every((name) => name in scope) ? { tree, scope } : undefined;
}
