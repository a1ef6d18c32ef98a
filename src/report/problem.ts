import type { AnyFormula, InputDeclaration } from '../formula/index.js';
import { type GivenOutput, givenOutputs } from '../formula/outputs.js';
import type { RecordedStep } from '../formula/recorder.js';
import type { Kind } from '../quantity/index.js';
import { isKind } from '../quantity/units/index.js';
import { equationMet, type MetEquation, type Scope, withDefinitions } from './equation.js';
import type { Value } from './evaluate.js';
import { namesIn } from './expression.js';
import { preferredUnit, type UnitPreferences } from './units.js';

/** An input of a formula with the value it had in a step. */
export interface GivenInput {
  /** Its name in the code. */
  readonly name: string;
  readonly declaration: InputDeclaration;
  readonly value: unknown;
  /** The value is the declared default, not the caller's. */
  readonly byDefault: boolean;
}

/** A number of the calculation, in SI. */
export interface Term {
  readonly symbol: string;
  readonly value: Value;
  /** A pure number, a count or a word has none. */
  readonly kind: Kind | undefined;
  /** Given by the caller; a count, printed as the whole number it is; or computed on the way. */
  readonly sort: 'given' | 'count' | 'computed';
}

/** A step as a problem on paper: the equation, the value of each of its symbols, the result. */
export interface Problem {
  readonly equation: MetEquation;
  readonly terms: readonly Term[];
  readonly result: Term & { readonly value: number };
  /** The unit in which each kind is wanted. */
  readonly wanted: ReadonlyMap<Kind, string>;
}

/** The inputs of a step in the order of the declaration, defaults filled in. */
export function givenInputs(formula: AnyFormula, input: RecordedStep['input']): GivenInput[] {
  return Object.entries(formula.inputs as Record<string, InputDeclaration>).map(([name, declaration]) => {
    const given = input[name];
    const byDefault = given === undefined && declaration.default !== undefined;
    return { name, declaration, value: byDefault ? declaration.default : given, byDefault };
  });
}

function isValue(value: unknown): value is Value {
  return ['number', 'string', 'boolean'].includes(typeof value);
}

/** The problem that a step poses, or nothing when its formula is an algorithm or its result no number. */
export function problemOf(
  formula: AnyFormula,
  step: Pick<RecordedStep, 'input' | 'result'>,
  preferences: UnitPreferences,
): Problem | undefined {
  const inputs = knownOf(givenInputs(formula, step.input));
  const output = givenOutputs(formula, step.result)[0];
  const equation = equationMet(formula, scopeOf(inputs));
  if (equation === undefined || output === undefined || typeof output.value !== 'number') return undefined;
  return posed(equation, inputs, { ...output, value: output.value }, preferences);
}

/** A value that stands in an equation: what it is called there, and in the code. */
export interface Known {
  readonly symbol: string;
  readonly kind: string;
  readonly value: Value;
  readonly name: string;
  readonly words: string;
}

/** Of inputs and results, those that are a number, a word or a flag. */
export function knownOf(given: readonly (GivenInput | GivenOutput)[]): Known[] {
  return given.flatMap(({ name, declaration, value }) =>
    isValue(value)
      ? [{ symbol: declaration.symbol, kind: declaration.kind, value, name, words: declaration.name }]
      : [],
  );
}

export function scopeOf(known: readonly Known[]): Scope {
  return Object.fromEntries(known.map(({ symbol, value }) => [symbol, value]));
}

/** An equation with the value of each of its symbols, and the result that it is to give. */
export function posed(
  equation: MetEquation,
  known: readonly Known[],
  output: GivenOutput & { readonly value: number },
  preferences: UnitPreferences,
): Problem {
  const { symbol, kind } = output.declaration;
  const result = { symbol, value: output.value, kind: isKind(kind) ? kind : undefined, sort: sortOf(kind, 'computed') };
  const scope = scopeOf(known);
  const solved = equation.sort === 'residual' ? { ...scope, [symbol]: output.value } : scope;
  const values = withDefinitions(solved, equation.definitions);
  const used = new Set(
    [
      equation.main,
      ...equation.definitions.map((each) => each.expression),
      ...equation.asked.map((each) => each.expression),
    ].flatMap(namesIn),
  );
  const terms: Term[] = [
    ...known.map((each) => ({
      symbol: each.symbol,
      value: each.value,
      kind: isKind(each.kind) ? each.kind : undefined,
      sort: sortOf(each.kind, 'given'),
    })),
    ...equation.definitions.map((each) => ({
      symbol: each.symbol,
      value: values[each.symbol] as Value,
      kind: isKind(each.kind) ? each.kind : undefined,
      sort: 'computed' as const,
    })),
  ].filter((term) => used.has(term.symbol));

  const wanted = new Map<Kind, string>();
  const want = (each: Kind | undefined, name: string, words = ''): void => {
    if (each !== undefined && !wanted.has(each)) wanted.set(each, preferredUnit(each, name, preferences, words));
  };
  for (const { symbol: own, kind: of, name, words } of known) if (used.has(own) && isKind(of)) want(of, name, words);
  want(result.kind, output.name, output.declaration.name);
  for (const term of terms) want(term.kind, term.symbol);
  return { equation, terms, result, wanted };
}

function sortOf(kind: string, otherwise: 'given' | 'computed'): Term['sort'] {
  return kind === 'count' ? 'count' : otherwise;
}
