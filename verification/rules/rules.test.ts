import { describe, expect, it } from 'vitest';
import { asmePcc2, iso24817, practice, type RuleSet } from '../../src/rules/index.js';
import { sealPractice } from '../../src/seal/practice.js';
import { asmePcc2List } from './asme-pcc-2.js';
import { type Coefficient, inSi, pathsOf } from './coefficient.js';
import { iso24817List } from './iso-24817.js';
import { practiceList, sealPracticeList } from './practice.js';

/** The coefficients of the code against the lists that a person keeps: the same ones, each with the same value. */

type Leaves = Record<string, unknown>;

/** Numbers, yes and no, nothing, and words that choose a form, by their path below a value. */
function leavesOf(value: unknown, path: string, into: Leaves): Leaves {
  if (typeof value !== 'object' || value === null) into[path] = value;
  else for (const [key, inner] of Object.entries(value)) leavesOf(inner, `${path}/${key}`, into);
  return into;
}

/** What a class serves is prose, and no coefficient. */
const isProse = (path: string): boolean => /^classes\/\d\/service$/u.test(path);

/** Every coefficient of a set and its clause, by its path; a rule is what has a clause. */
function coefficientsOf(node: unknown, path = '', into: Record<string, readonly [unknown, string]> = {}) {
  if (typeof node !== 'object' || node === null) return into;
  if ('clause' in node) {
    const { value, clause } = node as { value?: unknown; clause: string };
    for (const [own, leaf] of Object.entries(leavesOf(value, path, {}))) if (!isProse(own)) into[own] = [leaf, clause];
    return into;
  }
  for (const [key, child] of Object.entries(node)) coefficientsOf(child, path === '' ? key : `${path}/${key}`, into);
  return into;
}

function listed(list: readonly Coefficient[]) {
  const rows = list.flatMap(([path, value, clause]) =>
    pathsOf(path).map((each) => [each, [inSi(value), clause]] as const),
  );
  return { rows, byPath: Object.fromEntries(rows) };
}

const sets: readonly (readonly [string, RuleSet, readonly Coefficient[]])[] = [
  ['after ISO 24817', iso24817, iso24817List],
  ['after ASME PCC-2', asmePcc2, asmePcc2List],
];

describe.each(sets)('the rule set %s', (_, set, list) => {
  const { rows, byPath } = listed(list);
  const inCode = coefficientsOf(set);

  it('has the coefficients of the list and no others', () => {
    expect(Object.keys(inCode).toSorted()).toEqual(Object.keys(byPath).toSorted());
    expect(rows.length, 'a path is listed twice').toBe(Object.keys(byPath).length);
    expect(rows.length).toBeGreaterThan(60);
  });

  it('has each with the value and the clause of the list', () => {
    const wrong = rows
      .filter(([path, [value, clause]]) => !Object.is(inCode[path]?.[0], value) || inCode[path]?.[1] !== clause)
      .map(([path, [value, clause]]) => `${path}: ${value} (${clause}), not ${inCode[path]?.join(' (')})`);
    expect(wrong).toEqual([]);
  });
});

describe('the values of practice', () => {
  it('are those of the list, with their tags, and no others', () => {
    const inCode = Object.entries(practice).map(([name, { value, tag }]) => [name, value, tag]);
    const inList = practiceList.map(([name, value, tag]) => [name, inSi(value), tag]);
    expect(inCode).toEqual(inList);
  });

  it('of leak seals are those of the list, and no others', () => {
    const inCode = Object.entries(sealPractice).flatMap(([name, value]) => Object.entries(leavesOf(value, name, {})));
    expect(inCode).toEqual(sealPracticeList.map(([name, value]) => [name, inSi(value)]));
  });
});
