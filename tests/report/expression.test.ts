import { all, create } from 'mathjs';
import { describe, expect, it } from 'vitest';
import type { AnyFormula, Definition } from '../../src/formula/index.js';
import { formulas } from '../../src/registry/index.js';
import { evaluate } from '../../src/report/evaluate.js';
import { namesIn, parseExpression } from '../../src/report/expression.js';
import { substitute } from '../../src/report/substitute.js';
import { seeded } from '../../verification/oracles/random.js';
import './matchers.js';

// Outside their domain functions give NaN, as here, and not complex numbers.
const mathjs = create(all ?? {}, { predictable: true });

/** Every text of a declared equation that is an expression of numbers alone. */
function expressionsOf({ equation }: AnyFormula): string[] {
  if ('algorithm' in equation) return [];
  const defined = (where: readonly Definition[] = []): string[] => where.map(({ expression }) => expression);
  if ('expression' in equation) return [...defined(equation.where), equation.expression];
  if ('residual' in equation) return [...defined(equation.where), equation.residual];
  const branches = equation.branches.flatMap(({ when, where, expression }) => [
    ...(when === undefined || when.includes('"') ? [] : [when]),
    ...defined(where),
    expression,
  ]);
  return [...defined(equation.where), ...branches];
}

const declared = formulas.flatMap((formula) => expressionsOf(formula).map((text) => ({ id: formula.id, text })));

describe('the expression reader', () => {
  it.for(declared)('gives what mathjs gives: $id, $text', ({ id, text }) => {
    const expression = parseExpression(text);
    const random = seeded(`${id} ${text}`);
    const names = namesIn(expression);
    for (let draw = 0; draw < 10; draw++) {
      const scope = Object.fromEntries(names.map((name) => [name, 0.1 + 3 * random()]));
      const expected: unknown = mathjs.evaluate(text, { ...scope });
      const found = evaluate(expression, scope);
      if (typeof expected === 'number' && Number.isFinite(expected)) expect(found).toBeCloseToRelative(expected);
      else expect(found).toBe(expected);
    }
  });

  it.for(declared)('prints with fewer parentheses and the same meaning: $id, $text', ({ id, text }) => {
    const expression = parseExpression(text);
    const printed = substitute(expression);
    const again = parseExpression(printed);
    expect(substitute(again)).toBe(printed);
    expect(printed.replaceAll(/[^(]/gu, '').length).toBeLessThanOrEqual(text.replaceAll(/[^(]/gu, '').length);
    const random = seeded(`${id} ${text} printed`);
    for (let draw = 0; draw < 5; draw++) {
      const scope = Object.fromEntries(namesIn(expression).map((name) => [name, 0.1 + 3 * random()]));
      const [one, other] = [evaluate(expression, scope), evaluate(again, scope)];
      if (typeof one === 'number' && Number.isFinite(one)) expect(other).toBeCloseToRelative(one);
      else expect(other).toEqual(one);
    }
  });

  it.for([
    ['-x^2', -9],
    ['2^-x', 0.125],
    ['2^3^2', 512],
    ['(-x)^2', 9],
    ['10 - 4 - 3', 3],
    ['16 / 4 / 2', 2],
    ['16 / 4 * 2', 8],
    ['1 + 2 * x', 7],
    ['-2 * -x', 6],
    ['1.5e1 + .5', 15.5],
    ['max(1, min(x, 2), sqrt(4))', 2],
    ['cbrt(27) + log(exp(2)) + log10(100)', 7],
    ['x > 2 and x <= 3', true],
    ['x < 2 or not (x == 3)', false],
    ['word == "closed"', true],
    ["word != 'closed'", false],
  ] as const)('reads %s as mathematics does', ([text, expected]) => {
    const found = evaluate(parseExpression(text), { x: 3, word: 'closed' });
    if (typeof expected === 'number') expect(found).toBeCloseToRelative(expected);
    else expect(found).toBe(expected);
  });

  it.for(['', '1 +', '(1', '1)', 'x y', '2 x', 'a < b < c', 'f()', 'x = 1', '"open', 'and', '3 $ 4', 'a, b'])(
    'refuses %j',
    (text) => {
      expect(() => parseExpression(text)).toThrow(SyntaxError);
    },
  );

  it('knows neither names nor functions by guess', () => {
    expect(() => evaluate(parseExpression('x + y'), { x: 1 })).toThrow('y has no value');
    expect(() => evaluate(parseExpression('gamma(2)'), {})).toThrow('gamma is not a function');
    expect(() => evaluate(parseExpression('toString'), {})).toThrow('toString has no value');
    expect(() => evaluate(parseExpression('constructor(1)'), {})).toThrow('constructor is not a function');
    expect(() => evaluate(parseExpression('1 + "a"'), {})).toThrow(TypeError);
  });
});

describe('a substituted expression', () => {
  const put = (text: string, of: Record<string, [string, string?]>): string =>
    substitute(parseExpression(text), (name) => {
      const found = of[name];
      return found === undefined ? undefined : { text: found[0], unit: found[1] };
    }).replaceAll('\u00a0', ' ');

  it('stands like a calculation on paper', () => {
    expect(put('P * D / (2 * t)', { P: ['10', 'bar'], D: ['323.9', 'mm'], t: ['8.38', 'mm'] })).toBe(
      '10 bar * 323.9 mm / (2 * 8.38 mm)',
    );
    expect(put('(x)^2 / t', { x: ['3', 'mm'], t: ['4', 'mm'] })).toBe('(3 mm)^2 / 4 mm');
    expect(put('l / r', { l: ['3', 'mm'], r: ['0.1', 'mm/year'] })).toBe('3 mm / (0.1 mm/year)');
    expect(put('a - b', { a: ['3', 'K'], b: ['-4', 'K'] })).toBe('3 K - (-4 K)');
    expect(put('-a * b^2', { a: ['-3'], b: ['-4'] })).toBe('-(-3) * (-4)^2');
    expect(put('a < -b', { a: ['-3', 'K'], b: ['2', 'K'] })).toBe('-3 K < -2 K');
  });

  it('may take another sign for times', () => {
    expect(substitute(parseExpression('a * b / c'), undefined, '\u00d7')).toBe('a \u00d7 b / c');
  });
});
