import { describe, expect, test } from 'vitest';
import { parseExpression } from '../../src/report/expression.js';
import { withoutNoise } from '../../src/report/noise.js';
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

  test.each(['1 + 1e-9 * x', 'ceil(x + 2 * y)', '0.5 * D', 'ceil(x - 1e-3 * x)'])(
    'keeps every coefficient that counts: %s',
    (declared) => {
      expect(written(declared)).toBe(declared);
    },
  );
});
