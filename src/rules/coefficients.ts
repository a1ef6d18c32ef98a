import { type CoefficientShape, coefficientTable } from './coefficient-table.js';
import type { Rule, UnknownRule } from './rule.js';
import type { RuleSet } from './rule-set.js';

/** A rule of a set with its path: `overlap.minimum`, `leakFactor.3`. */
export interface PlacedRule {
  /** Where the rule stands in its set. */
  readonly path: string;
  /** The rule itself, or what is not known of it. */
  readonly rule: Rule<unknown> | UnknownRule;
}

/** A number of a rule set: `leakFactor.3.firstYear`, `defaultStrains.continuous.3[2].hoop`. */
export interface Coefficient {
  /** Where the number stands in its set. */
  readonly path: string;
  /** The rule that holds it. */
  readonly rule: Rule<unknown>;
  /** Path of the rule that holds it: `leakFactor.3`. */
  readonly rulePath: string;
  /** In the coherent SI unit of its kind. */
  readonly value: number;
  /** What it is, and which way it is on the safe side. */
  readonly shape: CoefficientShape;
}

/**
 * Every rule of a set, in the order of the set: a rule is what has a clause.
 *
 * @param set of this library, or a user's own
 */
export function rulesOf(set: RuleSet): PlacedRule[] {
  return rulesBelow(set, '');
}

function rulesBelow(node: unknown, path: string): PlacedRule[] {
  if (!isObject(node)) return [];
  if ('clause' in node) return [{ path, rule: node as unknown as PlacedRule['rule'] }];
  return Object.entries(node).flatMap(([key, child]) => rulesBelow(child, joined(path, key)));
}

/**
 * Every number of a set by its path; what is a word, a unit or nothing in this set is none.
 *
 * @param set of this library, or a user's own
 */
export function coefficientsOf(set: RuleSet): Map<string, Coefficient> {
  const found = new Map<string, Coefficient>();
  for (const { path, rule } of rulesOf(set)) {
    if (!('value' in rule)) continue;
    for (const [at, value] of numbersIn(rule.value, path)) {
      const shape = coefficientTable.get(patternOf(at));
      if (shape !== undefined) found.set(at, { path: at, rule, rulePath: path, value, shape });
    }
  }
  return found;
}

/**
 * The numbers of a value, each by its path.
 *
 * @param value a number, or what holds numbers
 * @param path of that value, which stands before the path of each number
 */
export function numbersIn(value: unknown, path: string): [path: string, value: number][] {
  if (typeof value === 'number') return [[path, value]];
  if (Array.isArray(value)) return value.flatMap((row, index) => numbersIn(row, `${path}[${index}]`));
  if (!isObject(value)) return [];
  return Object.entries(value).flatMap(([key, inner]) => numbersIn(inner, joined(path, key)));
}

/**
 * The path as the table of the coefficients has it: a class is `#`, a row `[]`.
 *
 * @param path of a number in its set
 */
export function patternOf(path: string): string {
  return path.replaceAll(/\[\d+\]/gu, '[]').replaceAll(/\.\d+(?=[.[]|$)/gu, '.#');
}

function joined(path: string, key: string): string {
  return path === '' ? key : `${path}.${key}`;
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
