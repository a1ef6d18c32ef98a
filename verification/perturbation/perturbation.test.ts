import { describe, expect, it } from 'vitest';
import { formulas } from '../../src/registry/index.js';
import { allConstants } from './bundle.js';
import { type Constant, constantsOf, returnsOf } from './constants.js';
import { caughtBy, type PerturbationList } from './list.js';
import { noWonders } from './no-wonder.js';
import { changedSince, constantAt, constantHashes, readSummary, summaryOf } from './summary.js';

/** The committed summary is of the constants that the code has, and the search for constants finds them. */

const summary = readSummary();
const constants = allConstants();

describe('the summary of the perturbation', () => {
  it('is of the constants of the code, but for those that it names (else run npm run perturb, or perturb:since)', () => {
    const ids = formulas.map(({ id }) => id);
    expect(changedSince(summary, constants, ids)).toEqual(summary.since);
    const unchanged = constants.filter(({ of }) => !summary.since.includes(of));
    if (summary.since.length === 0) expect(summary.count).toBe(unchanged.length);
    else expect(summary.count).toBeGreaterThanOrEqual(unchanged.length);
  });

  it('has the result of every formula, but for those that it names', () => {
    const ran = (id: string): boolean => !summary.since.includes(id);
    const ids = formulas.map(({ id }) => id);
    expect(Object.keys(summary.derivations).filter(ran).toSorted()).toEqual(ids.filter(ran).toSorted());
  });

  it('counts every constant once, by what noticed it', () => {
    expect(summary.catchers).toEqual(caughtBy);
    const sums = Object.entries(summary.bySort).map(([sort, counts]): [string, number] => {
      expect(counts).toHaveLength(caughtBy.length);
      return [sort, counts.reduce((sum, count) => sum + count, 0)];
    });
    expect(sums.reduce((total, [, sum]) => total + sum, 0)).toBe(summary.count);
    if (summary.since.length === 0)
      for (const [sort, sum] of sums) expect(sum, sort).toBe(constants.filter((each) => each.sort === sort).length);
    const unseen = Object.entries(summary.bySort).map(([sort, counts]) =>
      sort === 'limit' ? 0 : (counts.at(-1) ?? 0),
    );
    expect(summary.unnoticed).toHaveLength(unseen.reduce((sum, count) => sum + count, 0));
  });

  it('lists nothing unnoticed but what has its reason', () => {
    const known = noWonders.map(({ of, constant, sort }) => `${of} ${constant} ${sort}`);
    expect(
      summary.unnoticed
        .map(({ of, constant, sort }) => `${of} ${constant} ${sort}`)
        .filter((each) => !known.includes(each)),
    ).toEqual([]);
  });

  it('gives a reason for nothing that is gone', () => {
    const here = new Set(constants.map(({ of, text, sort }) => `${of} ${text} ${sort}`));
    expect(noWonders.filter(({ of, constant, sort }) => !here.has(`${of} ${constant} ${sort}`))).toEqual([]);
    for (const { because } of noWonders) expect(because.length).toBeGreaterThan(20);
  });

  it('finds what goes unnoticed where it stands today', () => {
    const gone = summary.unnoticed.filter((place) => constantAt(place, constants) === undefined);
    expect(gone.filter(({ of }) => !summary.since.includes(of))).toEqual([]);
  });
});

describe('the identity of the constants', () => {
  const inFile = (file: string, text: string): readonly Constant[] => constantsOf(file, text);
  const text = "export function f(a) { return 0.85 * a; }\nformula({ id: 'pipe/f', compute: f });";
  const hash = constantHashes(inFile('src/pipe/f.ts', text));

  it('does not change when a file moves, or when a word or another line does', () => {
    const reworded = `/** Other words, 7 of them. */\n${text.replace('a) { return 0.85 * a', 'area) { return area * 0.85')}`;
    expect(constantHashes(inFile('src/pipe/b31g/other.ts', reworded))).toEqual(hash);
  });

  it('changes when a constant is another, is gone or is added', () => {
    for (const other of ['0.86 * a', 'a', '0.85 * a * 2'])
      expect(constantHashes(inFile('src/pipe/f.ts', text.replace('0.85 * a', other)))).not.toEqual(hash);
  });

  it('tells apart constants that look alike, and finds each again', () => {
    const twice = inFile('src/pipe/f.ts', text.replace('0.85 * a', '2 * a + 2 ** a'));
    const list: PerturbationList = {
      change: 0.001,
      constants: twice.map(({ file, text: constant, code, sort }, index) => {
        const by = index === 1 ? 'nothing' : 'derivation';
        return { file, constant, code, sort, caughtBy: by, by: '', oneWay: false, smallest: 'not up to 100 %' };
      }),
      results: {},
    };
    const { unnoticed } = summaryOf(list, twice);
    expect(unnoticed).toMatchObject([{ of: 'pipe/f', constant: '2', which: 2 }]);
    expect(unnoticed.map((place) => constantAt(place, twice))).toEqual([twice[1]]);
  });
});

describe('the search for constants', () => {
  const found = (text: string, file = 'src/pipe/x.ts') =>
    constantsOf(file, text).map(({ text: own, sort, places }) => [own, sort, places.length]);

  it('finds coefficients, exponents, pi and constants of the module', () => {
    expect(found('const k = 0.8;\nfunction f(a) { return Math.PI * a ** 2 / (1 + k); }')).toEqual([
      ['0.8', 'coefficient', 1],
      ['Math.PI', 'coefficient', 1],
      ['2', 'coefficient', 1],
      ['1', 'coefficient', 1],
    ]);
  });

  it('takes a default in the function and in its declaration as one', () => {
    const text =
      'function f({ x: a = 69e6 as Stress }) { return a; }\nformula({ inputs: { x: { sample: [1, 2], default: 69e6 } } });';
    expect(found(text)).toEqual([['69e6', 'default', 2]]);
  });

  it('tells limits from coefficients', () => {
    expect(found("function f(x) { if (x > 0.8) return 3; within(x, 0, 0.9, 'x', ''); }")).toEqual([
      ['0.8', 'limit', 1],
      ['3', 'coefficient', 1],
      ['0.9', 'limit', 1],
    ]);
  });

  it('leaves out zero, places, steps, loop heads, digits, tolerances, refusals and types', () => {
    const text = [
      'type Two = 2;',
      'function f(a, i) {',
      "  for (let j = 1; j < 5; j += 1) refuse({ constraint: 'x', value: a[3] * 7 });",
      '  if (a.length < 2) return 0;',
      '  return a[i - 1].toFixed(4) + (a > 1e-9);',
      '}',
    ].join('\n');
    expect(found(text)).toEqual([]);
  });

  it('finds the values that a formula returns, and not those of the functions inside', () => {
    const text =
      "function f(a) { const g = () => { return 1; };\n if (a) return g();\n return a * 2; }\nformula({ id: 'x/f', compute: f });";
    const [only] = returnsOf('x.ts', text);
    expect(only?.id).toBe('x/f');
    expect(only?.places.map(([from, to]) => text.slice(from, to))).toEqual(['g()', 'a * 2']);
  });
});
