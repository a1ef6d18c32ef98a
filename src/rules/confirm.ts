import { refuse } from '../formula/index.js';
import { checkNumber } from './check-rule-set.js';
import { checkTables } from './check-tables.js';
import { isLessConservative } from './coefficient-table.js';
import { type Coefficient, coefficientsOf } from './coefficients.js';
import type { Confirmation, ConfirmedValue, Rule } from './rule.js';
import type { RuleSet } from './rule-set.js';

/**
 * A rule set with numbers that a user with the document at hand has confirmed in place of its own. Each rule says which of
 * its numbers were, by whom and what stood there before; the set that came in stays as it was.
 *
 * @param set which stays as it is
 * @param confirmations numbers by their paths, with who read them where
 * @throws CalculationError `invalid-input` for a path that the set does not have, one that stands twice, and a value that is
 *   not finite, outside its bounds or breaks the order of a table
 */
export function confirmedRules(set: RuleSet, confirmations: readonly Confirmation[]): RuleSet {
  const known = coefficientsOf(set);
  let confirmed = set;
  const seen = new Set<string>();
  for (const [index, confirmation] of confirmations.entries()) {
    const { path, value } = confirmation;
    const coefficient = known.get(path);
    if (coefficient === undefined) unknownPath(index, path, set, known);
    if (seen.has(path)) unfit(`confirmed[${index}].path`, path, 'must stand once: it is confirmed above');
    seen.add(path);
    checkNumber(`confirmed[${index}].value`, value, coefficient.shape);
    confirmed = withConfirmed(confirmed, coefficient, confirmation);
  }
  checkTables(confirmed, 'with what is confirmed, ');
  return confirmed;
}

function withConfirmed(
  set: RuleSet,
  { rulePath, path, value: instead, shape }: Coefficient,
  said: Confirmation,
): RuleSet {
  const value: ConfirmedValue = {
    ...said,
    kind: shape.kind,
    instead,
    lessConservative: isLessConservative(shape, said.value, instead),
  };
  const within = keysOf(path.slice(rulePath.length));
  return changed(set, keysOf(rulePath), (held) => {
    const rule = held as Rule<unknown>;
    return {
      ...rule,
      value: changed(rule.value, within, () => said.value),
      confirmed: [...(rule.confirmed ?? []), value],
    };
  }) as RuleSet;
}

/** A copy of `held` in which what stands at some keys is changed; all beside the way there is shared. */
function changed(held: unknown, keys: readonly string[], change: (value: unknown) => unknown): unknown {
  const [key, ...rest] = keys;
  if (key === undefined) return change(held);
  if (Array.isArray(held)) return held.map((row, index) => (index === Number(key) ? changed(row, rest, change) : row));
  const holder = held as Readonly<Record<string, unknown>>;
  return { ...holder, [key]: changed(holder[key], rest, change) };
}

function keysOf(path: string): string[] {
  return path.match(/[^.[\]]+/gu) ?? [];
}

function unknownPath(index: number, path: string, set: RuleSet, known: ReadonlyMap<string, Coefficient>): never {
  const near = [...known.keys()].filter((each) => sharesBeginning(each, path));
  const held = near.length > 0 ? near : [...new Set([...known.values()].map(({ rulePath }) => rulePath))];
  unfit(`confirmed[${index}].path`, path, `must be the path of a number of the rule set ${set.id}: ${held.join(', ')}`);
}

function sharesBeginning(one: string, other: string): boolean {
  const [first = ''] = keysOf(other);
  return first !== '' && keysOf(one)[0] === first;
}

function unfit(parameter: string, value: unknown, constraint: string): never {
  refuse({ code: 'invalid-input', parameter, value: JSON.stringify(value), unit: '', constraint });
}
