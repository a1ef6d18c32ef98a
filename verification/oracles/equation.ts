import {
  all,
  type BigNumber,
  type ConfigOptions,
  create,
  type FactoryFunctionMap,
  type MathJsInstance,
  type MathNode,
  type Unit,
} from 'mathjs';
import type { AnyFormula, Branch, Definition } from '../../src/formula/index.js';
import { mainOutput } from '../../src/formula/outputs.js';
import { baseUnits, type Dimension, dimensions } from '../../src/quantity/dimensions.js';
import type { Kind } from '../../src/quantity/index.js';
import { exactDecimal } from './exact-decimal.js';
import { nextDown, nextUp } from './ulp.js';

/**
 * The declared equation of a formula, evaluated by mathjs: once at 64 digits, once with units.
 * Nothing here knows the function that the equation belongs to.
 */

/** relTol 1e-60: by default mathjs takes 2.9999999999999996 for 3 in floor and in comparisons, and hides a wrong branch. */
const sharp: ConfigOptions = { number: 'BigNumber', precision: 64, relTol: 1e-60, absTol: 1e-300, predictable: true };

// The types call `all` optional; it never is.
const everything = all as FactoryFunctionMap;
export const mathDigits: MathJsInstance = create(everything, sharp);
const mathUnits: MathJsInstance = create(everything, { predictable: true });
mathUnits.import({
  bare: (value: unknown) =>
    isUnit(value) && value.dimensions.every((exponent) => exponent === 0) ? value.value : value,
});

function isUnit(value: unknown): value is Unit & { dimensions: number[]; value: number } {
  return mathUnits.isUnit(value);
}

/** A value at 64 digits, a word, or a yes or no. */
type Exact = BigNumber | string | boolean;

/** Names that mathjs reads as operators: no symbol of a formula. */
export const reservedNames = new Set([
  'mod',
  'to',
  'in',
  'and',
  'or',
  'xor',
  'not',
  'true',
  'false',
  'null',
  'undefined',
]);

const COMPARISONS = new Set(['equal', 'unequal', 'smaller', 'smallerEq', 'larger', 'largerEq']);

// The node classes of mathjs are typed loosely; these are the members that this file reads.
interface Node {
  readonly type: string;
  readonly fn?: string | { readonly name: string };
  readonly op?: string;
  readonly name?: string;
  readonly value?: unknown;
  readonly args?: Node[];
  readonly transform: (callback: (node: Node, path: string | null, parent: Node | null) => Node) => Node;
  readonly traverse: (callback: (node: Node, path: string | null, parent: Node | null) => void) => void;
  readonly compile: () => { evaluate(scope: Map<string, unknown>): unknown };
  readonly toString: () => string;
}

function parse(math: MathJsInstance, text: string): Node {
  return math.parse(text) as unknown as Node;
}

/** The symbols that an expression reads, without function names and `pi`. */
export function symbolsOf(expression: string): Set<string> {
  const names = new Set<string>();
  parse(mathDigits, expression).traverse((node, path, parent) => {
    const isFunctionName = parent?.type === 'FunctionNode' && path === 'fn';
    if (node.type === 'SymbolNode' && !isFunctionName && node.name !== 'pi' && node.name !== undefined)
      names.add(node.name);
  });
  for (const word of ['true', 'false']) names.delete(word);
  return names;
}

function isZero(node: Node | undefined): boolean {
  return node?.type === 'ConstantNode' && Number(node.value) === 0;
}

const isWord = (node: Node | undefined): boolean => node?.type === 'ConstantNode' && typeof node.value === 'string';

/** Words are compared as words; mathjs would turn them into numbers. */
function compareWords(math: MathJsInstance, node: Node): Node {
  const [a, b] = node.args ?? [];
  if (node.type !== 'OperatorNode' || !(isWord(a) || isWord(b))) return node;
  const text = `equalText(${a?.toString()}, ${b?.toString()})`;
  if (node.fn === 'equal') return parse(math, text);
  if (node.fn === 'unequal') return parse(math, `not ${text}`);
  return node;
}

type Compiled = (scope: Map<string, unknown>) => unknown;

/** Compiles for 64 digits. `pi` and each decimal that no double holds become hidden inputs, which are moved by an ulp too. */
function compileDigits(expression: string, literals: Map<string, BigNumber>): Compiled {
  const tree = parse(mathDigits, expression).transform((node, path, parent) => {
    if (node.type === 'SymbolNode' && node.name === 'pi' && !(parent?.type === 'FunctionNode' && path === 'fn')) {
      return literal('literal_pi', mathDigits.bignumber(mathDigits.evaluate('pi')), literals);
    }
    if (node.type === 'ConstantNode' && mathDigits.isBigNumber(node.value)) {
      const value = node.value;
      const held = mathDigits.bignumber(exactDecimal(value.toNumber()));
      return held.eq(value) ? node : literal(`literal_${literals.size}`, value, literals);
    }
    return compareWords(mathDigits, node);
  });
  const code = tree.compile();
  return (scope) => code.evaluate(scope);
}

function literal(name: string, value: BigNumber, literals: Map<string, BigNumber>): Node {
  literals.set(name, value);
  return new mathDigits.SymbolNode(name) as unknown as Node;
}

/** Compiles for units. A quotient without dimension becomes a plain number, and a bare 0 takes the unit of what it meets. */
function compileUnits(expression: string): Compiled {
  const tree = parse(mathUnits, expression).transform((node) => {
    const called = typeof node.fn === 'string' ? node.fn : node.fn?.name;
    const meets = called !== undefined && (COMPARISONS.has(called) || called === 'max' || called === 'min');
    if (meets && node.args?.some(isZero)) {
      const other = node.args.find((argument) => !isZero(argument));
      if (other !== undefined) {
        const zero = parse(mathUnits, `0 * (${other.toString()})`);
        node.args.forEach((argument, index) => {
          if (isZero(argument) && node.args !== undefined) node.args[index] = zero;
        });
      }
    }
    return compareWords(mathUnits, node);
  });
  const wrapped = tree.transform(function wrap(node): Node {
    if (node.type !== 'OperatorNode' || !['multiply', 'divide', 'pow'].includes(String(node.fn))) return node;
    const inner = node.args?.map((argument) => argument.transform(wrap)) ?? [];
    const operator = new mathUnits.OperatorNode(node.op as never, node.fn as never, inner as unknown as MathNode[]);
    return new mathUnits.FunctionNode('bare', [operator]) as unknown as Node;
  });
  const code = wrapped.compile();
  return (scope) => code.evaluate(scope);
}

interface CompiledBranch {
  readonly name: string;
  readonly when: Compiled | undefined;
  readonly where: readonly { symbol: string; kind: Definition['kind']; value: Compiled }[];
  readonly expression: Compiled;
}

interface CompiledEquation {
  readonly where: CompiledBranch['where'];
  readonly branches: readonly CompiledBranch[];
}

function compileEquation(formula: AnyFormula, compile: (expression: string) => Compiled): CompiledEquation {
  const { equation } = formula;
  if ('algorithm' in equation) throw new Error(`${formula.id} states an algorithm, not an equation`);
  const definitions = (where: readonly Definition[] = []): CompiledBranch['where'] =>
    where.map(({ symbol, kind, expression }) => ({ symbol, kind, value: compile(expression) }));
  const branch = ({ when, where, expression }: Branch, index: number): CompiledBranch => ({
    name: when === undefined ? `branch ${index + 1}, otherwise` : `branch ${index + 1}, when ${when}`,
    when: when === undefined ? undefined : compile(when),
    where: definitions(where),
    expression: compile(expression),
  });
  if ('branches' in equation) {
    return { where: definitions(equation.where), branches: equation.branches.map(branch) };
  }
  const text = 'residual' in equation ? equation.residual : equation.expression;
  const only = { ...branch({ expression: text }, 0), name: 'residual' in equation ? 'residual' : 'expression' };
  return { where: definitions(equation.where), branches: [only] };
}

/** Symbols that an equation reads before anything declares them: inputs, definitions in their order, the result of a residual. */
export function undeclaredSymbols(formula: AnyFormula): string[] {
  const { equation } = formula;
  if ('algorithm' in equation) return [];
  const known = new Set(Object.values<{ symbol: string }>(formula.inputs).map(({ symbol }) => symbol));
  if ('residual' in equation) known.add(mainOutput(formula).declared.symbol);
  const unknown = new Set<string>();
  const read = (expression: string, declared: ReadonlySet<string>): void => {
    for (const symbol of symbolsOf(expression)) if (!declared.has(symbol)) unknown.add(symbol);
  };
  const define = (where: readonly Definition[] = [], declared: Set<string>): void => {
    for (const { symbol, expression } of where) {
      read(expression, declared);
      declared.add(symbol);
    }
  };
  define(equation.where, known);
  if ('branches' in equation) {
    for (const { when, where, expression } of equation.branches) {
      const inner = new Set(known);
      if (when !== undefined) read(when, inner);
      define(where, inner);
      read(expression, inner);
    }
  } else read('residual' in equation ? equation.residual : equation.expression, known);
  return [...unknown];
}

/** The value of the output that the equation states. */
export function mainResult(formula: AnyFormula, result: unknown): unknown {
  const { member } = mainOutput(formula);
  return member === undefined ? result : (result as Record<string, unknown>)[member];
}

/** An evaluation: the value and the branch that gave it. */
interface Evaluation {
  readonly value: Exact;
  readonly branch: string;
}

/** The equation of a formula at 64 digits. */
export interface ExactEquation {
  /** Evaluates with the inputs as exact doubles. */
  evaluate(bySymbol: Readonly<Record<string, unknown>>): Evaluation;
  /**
   * The sum, over every input and every decimal in the text, of the change that one ulp in it makes: how far float64
   * may honestly be from the reference.
   */
  spread(bySymbol: Readonly<Record<string, unknown>>, fixed?: readonly string[]): BigNumber;
  /** The condition number: by how much the result changes, relative to itself, for a relative change in every input. */
  condition(bySymbol: Readonly<Record<string, unknown>>): number;
}

function toExact(value: unknown): Exact {
  return typeof value === 'number' ? mathDigits.bignumber(exactDecimal(value)) : (value as Exact);
}

const compiled = new WeakMap<AnyFormula, ExactEquation>();

/** The equation of a formula, compiled once for all that ask for it. */
export function exactEquation(formula: AnyFormula): ExactEquation {
  const equation = compiled.get(formula) ?? compileExact(formula);
  compiled.set(formula, equation);
  return equation;
}

function compileExact(formula: AnyFormula): ExactEquation {
  const literals = new Map<string, BigNumber>();
  const { where, branches } = compileEquation(formula, (expression) => compileDigits(expression, literals));

  const run = (inputs: ReadonlyMap<string, Exact>): Evaluation => {
    const scope = new Map<string, unknown>(inputs);
    for (const { symbol, value } of where) scope.set(symbol, value(scope));
    const taken = branches.find(({ when }) => when === undefined || when(scope) === true);
    if (taken === undefined) throw new Error(`${formula.id}: no branch applies, and none is without when`);
    for (const { symbol, value } of taken.where) scope.set(symbol, value(scope));
    return { value: taken.expression(scope) as Exact, branch: taken.name };
  };

  const scopeOf = (bySymbol: Readonly<Record<string, unknown>>): Map<string, Exact> =>
    new Map([...Object.entries(bySymbol).map(([symbol, value]) => [symbol, toExact(value)] as const), ...literals]);

  const moved = (inputs: Map<string, Exact>, symbol: string, to: BigNumber, base: BigNumber): BigNumber => {
    const { value } = run(new Map([...inputs, [symbol, to]]));
    if (!mathDigits.isBigNumber(value) || !value.isFinite()) return mathDigits.bignumber(0);
    return value.minus(base).abs();
  };

  // A step far below float64 and far above 64 digits.
  const step = mathDigits.bignumber('1e-25');

  return {
    evaluate: (bySymbol) => run(scopeOf(bySymbol)),
    condition: (bySymbol) => {
      const inputs = scopeOf(bySymbol);
      const base = run(inputs).value;
      if (!mathDigits.isBigNumber(base) || base.isZero()) return Number.NaN;
      let sum = mathDigits.bignumber(0);
      for (const symbol of Object.keys(bySymbol)) {
        const exact = inputs.get(symbol);
        if (!mathDigits.isBigNumber(exact)) continue;
        sum = sum.plus(moved(inputs, symbol, exact.times(step.plus(1)), base));
      }
      return sum.div(base.abs()).div(step).toNumber();
    },
    spread: (bySymbol, fixed = []) => {
      const inputs = scopeOf(bySymbol);
      const base = run(inputs).value;
      let sum = mathDigits.bignumber(0);
      if (!mathDigits.isBigNumber(base)) return sum;
      for (const [symbol, exact] of inputs) {
        if (!mathDigits.isBigNumber(exact) || fixed.includes(symbol)) continue;
        const value = exact.toNumber();
        const up = exact.plus(exactDecimal(nextUp(value) - value));
        const down = exact.minus(exactDecimal(value - nextDown(value)));
        const [a, b] = [moved(inputs, symbol, up, base), moved(inputs, symbol, down, base)];
        sum = sum.plus(a.gt(b) ? a : b);
      }
      return sum;
    },
  };
}

/** A dimension written out: `kg m^-1 s^-2`, or `1`. */
function dimensionText(dimension: Dimension): string {
  const factors = baseUnits.filter((unit) => (dimension[unit] ?? 0) !== 0);
  return factors.map((unit) => (dimension[unit] === 1 ? unit : `${unit}^${dimension[unit]}`)).join(' ') || '1';
}

/** The value with the coherent SI unit of its kind; plain numbers, angles, ratios, words and flags stay as they are. */
function withUnit(value: unknown, kind: string): unknown {
  if (typeof value !== 'number' || !Object.hasOwn(dimensions, kind)) return value;
  const text = dimensionText(dimensions[kind as Kind]);
  return text === '1' ? value : mathUnits.unit(value, text);
}

function unitProblem(value: unknown, kind: string, what: string): string | undefined {
  if (!Object.hasOwn(dimensions, kind)) {
    return isUnit(value)
      ? `${what} is a ${kind}, but its expression has the unit ${value.toSI().formatUnits()}`
      : undefined;
  }
  const wanted = dimensionText(dimensions[kind as Kind]);
  if (wanted === '1') {
    return isUnit(value) ? `${what} has no unit, but its expression has ${value.toSI().formatUnits()}` : undefined;
  }
  if (!isUnit(value)) return `${what} is in ${wanted}, but its expression is a plain number`;
  if (value.equalBase(mathUnits.unit(1, wanted))) return undefined;
  return `${what} is in ${wanted}, but its expression is in ${value.toSI().formatUnits()}`;
}

/** What mathjs says against the units of an equation, over every branch and every intermediate definition; empty when all is well. */
export function unitProblems(
  formula: AnyFormula,
  bySymbol: Readonly<Record<string, unknown>>,
  result: unknown,
): string[] {
  const { declared } = mainOutput(formula);
  const { where, branches } = compileEquation(formula, compileUnits);
  const problems: string[] = [];
  const attempt = <T>(what: string, act: () => T): T | undefined => {
    try {
      return act();
    } catch (error) {
      problems.push(`${what}: ${error instanceof Error ? error.message : String(error)}`);
      return undefined;
    }
  };
  const define = (scope: Map<string, unknown>, definitions: CompiledBranch['where']): void => {
    for (const { symbol, kind, value } of definitions) {
      const found = attempt(symbol, () => value(scope));
      const problem = found === undefined ? undefined : unitProblem(found, kind, symbol);
      if (problem !== undefined) problems.push(problem);
      scope.set(symbol, found);
    }
  };
  const scope = new Map<string, unknown>();
  for (const { symbol, kind } of Object.values<{ symbol: string; kind: string }>(formula.inputs)) {
    scope.set(symbol, withUnit(bySymbol[symbol], kind));
  }
  const isResidual = 'residual' in formula.equation;
  if (isResidual) scope.set(declared.symbol, withUnit(mainResult(formula, result), declared.kind));
  define(scope, where);
  for (const branch of branches) {
    const inner = new Map(scope);
    if (branch.when !== undefined) attempt(branch.name, () => branch.when?.(inner));
    define(inner, branch.where);
    const found = attempt(branch.name, () => branch.expression(inner));
    if (found === undefined || isResidual) continue;
    const problem = unitProblem(found, declared.kind, `${declared.symbol} (${branch.name})`);
    if (problem !== undefined) problems.push(problem);
  }
  return problems;
}
