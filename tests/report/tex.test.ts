import temml from 'temml';
import { describe, expect, it } from 'vitest';
import type { InputDeclaration } from '../../src/formula/index.js';
import { givenOutputs } from '../../src/formula/outputs.js';
import { formulas } from '../../src/registry/index.js';
import { parseExpression } from '../../src/report/expression.js';

import { symbolTex, toTex } from '../../src/report/tex.js';

const tex = (text: string): string => toTex(parseExpression(text));

describe('an expression in TeX', () => {
  it.for([
    ['P * D / (2 * t)', '\\frac{P \\, D}{2 \\, t}'],
    ['sqrt(1 + 0.8 * z)', '\\sqrt{1 + 0.8 \\, z}'],
    ['L^2 / (D * t)', '\\frac{{L}^{2}}{D \\, t}'],
    ['(a + b)^2', '{\\left(a + b\\right)}^{2}'],
    ['a - (b - c)', 'a - \\left(b - c\\right)'],
    ['exp(-k * t)', 'e^{-k \\, t}'],
    ['2 * 3', '2 \\cdot 3'],
    ['cbrt(x) + abs(y) + floor(n)', '\\sqrt[3]{x} + \\left|y\\right| + \\left\\lfloor n\\right\\rfloor'],
    ['x <= 6e-5 and y != 1', 'x \\le 6\\times 10^{-5} \\;\\text{and}\\; y \\ne 1'],
    ['log(x) + max(a, b)', '\\ln\\left(x\\right) + \\max\\left(a,\\;b\\right)'],
  ])('%s is %s', ([text, expected]) => {
    expect(tex(text ?? '')).toBe(expected);
  });

  it.for([
    ['sigma_h', '\\sigma_{h}'],
    ['nu_ca', '\\nu_{\\mathrm{ca}}'],
    ['t_s', 't_{s}'],
    ['eps_c0', '\\varepsilon_{\\mathrm{c0}}'],
    ['D', 'D'],
    ['MAWP', '\\mathrm{MAWP}'],
    ['pi', '\\pi'],
    ['t_min_c', 't_{\\mathrm{min},c}'],
    ['alpha_s', '\\alpha_{s}'],
  ])('the symbol %s is %s', ([text, expected]) => {
    expect(symbolTex(text ?? '')).toBe(expected);
  });

  it('can be set for every declared equation and every symbol', () => {
    for (const { id, equation, inputs, output } of formulas) {
      const symbols = [
        ...Object.values(inputs as Record<string, InputDeclaration>).map(({ symbol }) => symbol),
        ...givenOutputs({ output } as never, {}).map(({ declaration }) => declaration.symbol),
      ];
      const text = JSON.stringify(equation);
      const expressions = [...text.matchAll(/"(?:expression|residual|when)":("(?:[^"\\]|\\.)*")/gu)].map(
        ([, quoted]) => JSON.parse(quoted ?? '""') as string,
      );
      for (const each of [...symbols.map(symbolTex), ...expressions.map(tex)])
        expect(() => temml.renderToString(each, { throwOnError: true, strict: true }), `${id}: ${each}`).not.toThrow();
    }
  });
});
