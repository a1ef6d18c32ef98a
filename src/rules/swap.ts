import { patternOf, rulesOf } from './coefficients.js';
import type { RuleSet } from './rule-set.js';

/**
 * The group of a rule: its path without class. `leakFactor`, `defaultStrains.rare`, `overlap.minimum`.
 *
 * @param path of a rule in its set
 */
export function groupOf(path: string): string {
  return patternOf(path).replaceAll('.#', '');
}

/**
 * The groups in which two sets hold different values, in the order of the set.
 *
 * @param one whose order counts
 * @param other held against it
 */
export function differingGroups(one: RuleSet, other: RuleSet): string[] {
  const there = new Map(rulesOf(other).map(({ path, rule }) => [path, rule]));
  const groups = new Set<string>();
  for (const { path, rule } of rulesOf(one)) {
    const beside = there.get(path);
    if ('value' in rule && beside !== undefined && 'value' in beside && !same(rule.value, beside.value))
      groups.add(groupOf(path));
  }
  return [...groups];
}

/**
 * A rule set that has some groups of rules from another.
 *
 * @param set which stays as it is
 * @param other where the groups are taken from
 * @param groups by their names, as `groupOf` gives them
 */
export function withGroups(set: RuleSet, other: RuleSet, groups: ReadonlySet<string>): RuleSet {
  return swapped(set, other, '', groups) as RuleSet;
}

function swapped(held: unknown, other: unknown, path: string, groups: ReadonlySet<string>): unknown {
  if (typeof held !== 'object' || held === null) return held;
  if ('clause' in held) return groups.has(groupOf(path)) ? other : held;
  const beside = other as Readonly<Record<string, unknown>>;
  const parts = Object.entries(held).map(([key, inner]) => {
    return [key, swapped(inner, beside[key], path === '' ? key : `${path}.${key}`, groups)] as const;
  });
  return Object.fromEntries(parts);
}

function same(one: unknown, other: unknown): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}
