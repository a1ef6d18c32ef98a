import { describe, expect, it } from 'vitest';
import { formulas } from '../../src/registry/index.js';
import { readPerturbations } from '../report/perturbation.js';
import { allConstants } from './bundle.js';
import { constantsOf, returnsOf } from './constants.js';
import { caughtBy } from './list.js';

/** The committed list is one of the constants that the code has, and the search for constants finds them. */

const list = readPerturbations();

describe('the list of perturbed constants', () => {
  it('has the constants of the code, in their order (else run npm run perturb)', () => {
    const here = allConstants().map(({ file, text, code, sort }) => [file, text, code, sort]);
    expect(list?.constants.map(({ file, constant, code, sort }) => [file, constant, code, sort])).toEqual(here);
  });

  it('has the result of every formula', () => {
    expect(Object.keys(list?.results ?? {}).toSorted()).toEqual(formulas.map(({ id }) => id).toSorted());
  });

  it('says of each what noticed it', () => {
    for (const each of [...(list?.constants ?? []), ...Object.values(list?.results ?? {})])
      expect(caughtBy).toContain(each.caughtBy);
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
