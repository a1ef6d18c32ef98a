import { coefficientTable, isLessConservative } from './coefficient-table.js';
import { type Coefficient, patternOf, rulesOf } from './coefficients.js';
import type { RuleSet } from './rule-set.js';

/** A value of a rule: a number, whether something is allowed, or no such limit, option or rule. */
export type RuleValue = number | boolean | null;

/** A value of a rule set that another set has otherwise. */
export interface RuleDifference {
  /** Where the value stands in both sets. */
  readonly path: string;
  /** Where the set that is compared has it from. */
  readonly clause: string;
  /** Kind of the number; `rows` for how many rows a table has, `word` for what is no number. */
  readonly kind: Coefficient['shape']['kind'] | 'rows' | 'word';
  /** What the set that is compared has there. */
  readonly value: RuleValue;
  /** What the other set has there. */
  readonly instead: RuleValue;
  /** Whether it may make a repair thinner, shorter or wider in its use. */
  readonly lessConservative: boolean;
}

/**
 * Every value in which a rule set differs from another one, in its order; words that nothing is computed from are none.
 *
 * @param other the set that it is held against
 * @param set the set whose values are looked at
 */
export function differencesFrom(other: RuleSet, set: RuleSet): RuleDifference[] {
  const there = new Map(rulesOf(other).map(({ path, rule }) => [path, rule]));
  return rulesOf(set).flatMap(({ path, rule }) => {
    const beside = there.get(path);
    if (!('value' in rule) || beside === undefined || !('value' in beside)) return [];
    return inValue(path, rule.value, beside.value).map((each) => ({ ...each, clause: rule.clause }));
  });
}

type Found = Omit<RuleDifference, 'clause'>;

function inValue(path: string, value: unknown, instead: unknown): Found[] {
  if (value === null || instead === null)
    return value === instead ? [] : [{ path, kind: 'word', ...oneIsNone(path, value, instead) }];
  if (typeof value === 'number' && typeof instead === 'number')
    return value === instead ? [] : [inNumber(path, value, instead)];
  if (typeof value === 'boolean' && typeof instead === 'boolean')
    return value === instead ? [] : [{ path, kind: 'word', value, instead, lessConservative: value }];
  if (Array.isArray(value) && Array.isArray(instead)) return inRows(path, value, instead);
  if (typeof value !== 'object' || typeof instead !== 'object') return [];
  const beside = instead as Readonly<Record<string, unknown>>;
  return Object.entries(value).flatMap(([key, inner]) => inValue(`${path}.${key}`, inner, beside[key]));
}

/** A number that is in no table is the unit of temperature of its rule: the smaller it is, the further the factor reaches. */
function inNumber(path: string, value: number, instead: number): Found {
  const shape = coefficientTable.get(patternOf(path));
  const { kind } = shape ?? { kind: 'temperature difference' };
  const lessConservative = shape === undefined ? value < instead : isLessConservative(shape, value, instead);
  return { path, kind, value, instead, lessConservative };
}

/** No limit is wider than any; an option that is not there cannot be asked for. */
function oneIsNone(
  path: string,
  value: unknown,
  instead: unknown,
): Pick<Found, 'value' | 'instead' | 'lessConservative'> {
  const isOption = path.startsWith('leakFactorOption');
  return {
    value: leaf(value),
    instead: leaf(instead),
    lessConservative: isOption ? instead === null : value === null,
  };
}

/** A rule of several numbers against none: that it is there is what counts. */
function leaf(value: unknown): RuleValue {
  return value === null || typeof value === 'number' ? value : true;
}

/** Which of two tables with unlike rows is the safer one hangs on the life of the case. */
function inRows(path: string, rows: readonly unknown[], instead: readonly unknown[]): Found[] {
  const more: Found[] =
    rows.length === instead.length
      ? []
      : [{ path, kind: 'rows', value: rows.length, instead: instead.length, lessConservative: true }];
  const both = rows.slice(0, instead.length);
  return [...more, ...both.flatMap((row, index) => inValue(`${path}[${index}]`, row, instead[index]))];
}
