import { describe, expect, test } from 'vitest';
import { parseExpression } from '../../src/report/expression.js';
import { withoutNoise, withoutZeros } from '../../src/report/noise.js';
import { substitute } from '../../src/report/substitute.js';

const written = (text: string): string => substitute(withoutNoise(parseExpression(text)));

describe('an equation as it is written on paper', () => {
  test.each([
    ['max(t_m - e, 0 * t_m)', 'max(t_m - e, 0)'],
    ['max(n_min, ceil(x - 1e-9 * max(1, x)))', 'max(n_min, ceil(x))'],
    ['floor(n_m + 1e-9 * n_m)', 'floor(n_m)'],
  ])('%s is %s', (declared, onPaper) => {
    expect(written(declared)).toBe(onPaper);
  });

  test.each([
    ['pi * p * D^2 / 4 + F', 'F', 'pi * p * D^2 / 4'],
    ['sqrt(F^2 + 4 * V^2) + 4 / D * sqrt(M^2 + T^2)', 'V M T', 'sqrt(F^2)'],
    ['a - b', 'a', '-b'],
    ['a - b / c', 'b', 'a'],
    ['sigma - 4 * M / (pi * D^2 * t)', 'M sigma', '0'],
    ['max(F, 0)', 'F', 'max(F, 0)'],
    ['a / b', 'b', 'a / b'],
    ['x <= F', 'F', 'x <= F'],
    ['exp(F)', 'F', 'exp(F)'],
    ['cos(F) + F', 'F', 'cos(F)'],
    ['a ^ F', 'F', 'a^0'],
  ])('%s, where %s is nought, is %s in numbers', (declared, noughts, onPaper) => {
    const isZero = (name: string): boolean => noughts.split(' ').includes(name);
    expect(substitute(withoutZeros(parseExpression(declared), isZero))).toBe(onPaper);
  });

  test.each(['1 + 1e-9 * x', 'ceil(x + 2 * y)', '0.5 * D', 'ceil(x - 1e-3 * x)'])(
    'keeps every coefficient that counts: %s',
    (declared) => {
      expect(written(declared)).toBe(declared);
    },
  );
});
