import type { AnyFormula, InputDeclaration } from '../../formula/index.js';
import type { FormulaInput } from '../../json/formula-input.js';
import { unitOf } from '../../quantity/index.js';
import { fromSi } from '../../quantity/quantity.js';
import { equationMet, type MetEquation, type Scope, withDefinitions } from '../../report/equation.js';
import { evaluate, type Value } from '../../report/evaluate.js';
import { type Expression, namesIn } from '../../report/expression.js';
import { substitute } from '../../report/substitute.js';

/** Slips in writing the equation down: a power, a root or pi forgotten, a sign turned, a bracket upside down, the wrong logarithm. */

interface ExpressionSlip {
  readonly words: string;
  /** What comes out over what should, in the units of what was typed; nothing where the slip was computed in SI. */
  readonly factor?: number;
  /** What comes out in SI. */
  readonly value?: number;
}

interface Written {
  readonly words: string;
  readonly expression: Expression;
}

const ONE: Expression = { sort: 'number', text: '1' };

const negative = (operand: Expression): Expression => ({ sort: 'unary', operator: '-', operand });

/** A number to a power that is one itself. */
function withoutPower({ left, right }: Extract<Expression, { sort: 'binary' }>): Written[] {
  const turned = { words: 'the sign of an exponent was turned', expression: power(left, negative(right)) };
  if (namesIn(right).length > 0) return [turned];
  const isRoot = evaluate(right, {}) === 0.5;
  const words = isRoot ? 'a square root was forgotten' : `a power of ${substitute(right)} was forgotten`;
  return right.sort === 'number' ? [{ words, expression: left }] : [{ words, expression: left }, turned];
}

function power(left: Expression, right: Expression): Expression {
  return { sort: 'binary', operator: '^', left, right };
}

/** The expression with one thing in it written otherwise, each such. */
function otherwise(whole: Expression): Written[] {
  const here: Written[] = [];
  if (whole.sort === 'binary' && whole.operator === '^') here.push(...withoutPower(whole));
  if (whole.sort === 'binary' && (whole.operator === '+' || whole.operator === '-'))
    here.push({
      words: whole.operator === '+' ? 'a minus was written for a plus' : 'a plus was written for a minus',
      expression: { ...whole, operator: whole.operator === '+' ? '-' : '+' },
    });
  if (whole.sort === 'number' && whole.text === '273.15')
    here.push({ words: '273 was taken for 273.15', expression: { sort: 'number', text: '273' } });
  if (whole.sort === 'call' && whole.args[0] !== undefined) {
    if (whole.name === 'sqrt') here.push({ words: 'a square root was forgotten', expression: whole.args[0] });
    if (whole.name === 'cbrt') here.push({ words: 'a cube root was forgotten', expression: whole.args[0] });
    if (whole.name === 'exp')
      here.push({
        words: 'the sign of an exponent was turned',
        expression: { ...whole, args: [negative(whole.args[0])] },
      });
  }
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

/** The numbers as they were typed, since a forgotten square is one of the number that stands on the paper; else in SI. */
function scopeOf(formula: AnyFormula, { input, typed }: FormulaInput): Scope {
  const scope: Record<string, Value> = {};
  for (const [key, declared] of Object.entries(formula.inputs as Readonly<Record<string, InputDeclaration>>)) {
    const value = input[key] ?? declared.default;
    const entry = typed[key];
    const unit = entry === undefined ? undefined : unitOf(entry.kind, entry.unit);
    // Degrees enter an equation as kelvin, and where it wants degrees it takes 273.15 off itself.
    const isScaled = unit !== undefined && unit[2] === undefined;
    if (typeof value === 'number') scope[declared.symbol] = isScaled ? fromSi(value, unit) : value;
    else if (typeof value === 'string' || typeof value === 'boolean') scope[declared.symbol] = value;
  }
  return scope;
}

/** Of a formula that is one equation, or has one for this input, each thing in it or in what it defines written otherwise. */
export function expressionSlips(formula: AnyFormula, given: FormulaInput): ExpressionSlip[] {
  const inSi = { input: given.input, typed: {} };
  const met = metBy(formula, inSi);
  if (met === undefined) return [];
  const variants = variantsOf(met);
  const [si, typed] = [scopeOf(formula, inSi), scopeOf(formula, given)];
  const right = resultOf(met, typed);
  return variants.flatMap(({ words, equation }): ExpressionSlip[] => {
    const [value, asTyped] = [resultOf(equation, si), resultOf(equation, typed)];
    const factor = asTyped / right;
    return [
      ...(Number.isFinite(value) ? [{ words, value }] : []),
      ...(Number.isFinite(factor) ? [{ words, factor }] : []),
    ];
  });
}

function variantsOf(met: MetEquation): { readonly words: string; readonly equation: MetEquation }[] {
  const ofMain = otherwise(met.main).map(({ words, expression }) => ({
    words,
    equation: { ...met, main: expression },
  }));
  const ofDefinitions = met.definitions.flatMap((definition, place) =>
    otherwise(definition.expression).map(({ words, expression }) => ({
      words,
      equation: { ...met, definitions: met.definitions.with(place, { ...definition, expression }) },
    })),
  );
  return [...ofMain, ...ofDefinitions];
}

/** What the equation gives on paper for inputs that the formula refuses; no number where it has none. */
export function onPaper(formula: AnyFormula, input: Readonly<Record<string, unknown>>): number {
  const given = { input, typed: {} };
  const { equation } = formula;
  const hasBranch = !('branches' in equation) || equation.branches.at(-1)?.when === undefined;
  const met = hasBranch ? metBy(formula, given) : undefined;
  return met === undefined ? Number.NaN : resultOf(met, scopeOf(formula, given));
}

function resultOf({ main, definitions }: MetEquation, scope: Scope): number {
  const value = evaluate(main, withDefinitions(scope, definitions));
  return typeof value === 'number' ? value : Number.NaN;
}

/** The equation that the input meets, where each of its names has a value: no root that is searched for, no algorithm. */
function metBy(formula: AnyFormula, given: FormulaInput): MetEquation | undefined {
  const scope = scopeOf(formula, given);
  const met = equationMet(formula, scope);
  if (met?.sort !== 'expression') return undefined;
  const defined = met.definitions.map(({ symbol }) => symbol);
  const names = [met.main, ...met.definitions.map(({ expression }) => expression)].flatMap(namesIn);
  return names.every((name) => name in scope || defined.includes(name)) ? met : undefined;
}
