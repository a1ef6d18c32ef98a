import { describe, expect, test } from 'vitest';
import { formulas } from '../../src/registry/index.js';
import { equationMath, symbolMath } from '../../src/report/mathml.js';
import { TIE } from '../../src/report/substitute.js';

/** Every opening tag has its closing one, in order. */
function isWellFormed(math: string): boolean {
  const open: string[] = [];
  for (const [, slash, name = '', , self] of math.matchAll(/<(\/?)([a-z]+)([^>]*?)(\/?)>/gu)) {
    if (self === '/') continue;
    if (slash !== '/') open.push(name);
    else if (open.pop() !== name) return false;
  }
  return open.length === 0;
}

describe('an equation as MathML', () => {
  const texts = formulas.flatMap(({ equation }) => {
    if ('expression' in equation) return [equation.expression];
    return 'residual' in equation ? [equation.residual] : [];
  });

  test('is well formed for every equation of the library', () => {
    expect(texts.length).toBeGreaterThan(200);
    for (const text of texts) {
      const math = equationMath(text);
      expect(math, text).toBeDefined();
      expect(isWellFormed(math ?? ''), text).toBe(true);
    }
  });

  test('sets fractions, roots, powers, Greek letters and subscripts', () => {
    expect(equationMath('P * D / (2 * t)')).toMatch(/^<mfrac><mrow>.*<\/mrow><mrow>.*<\/mrow><\/mfrac>$/u);
    expect(equationMath('sqrt(x)')).toBe('<msqrt><mi>x</mi></msqrt>');
    expect(equationMath('x^2')).toContain('<msup>');
    expect(symbolMath('sigma_h')).toBe('<msub><mi>σ</mi><mrow><mi>h</mi></mrow></msub>');
  });

  test('keeps the parentheses without which it would say something else', () => {
    const marks = (text: string): string => (equationMath(text) ?? '').replaceAll(/<[^>]+>/gu, '');
    expect(marks('(a + b) * c')).toBe('(a+b)·c');
    expect(marks('a - (b - c)')).toBe('a−(b−c)');
    expect(marks('a - (b + c)')).toBe('a−(b+c)');
    expect(marks('a * (-b)')).toBe('a·(−b)');
    expect(marks('(a * b)^2')).toBe('(a·b)2');
    expect(marks('(a / b)^2')).toBe('(ab)2');
    expect(marks('-(a + b)')).toBe('−(a+b)');
  });

  test('sets a number with its unit upright, with powers raised', () => {
    const math = equationMath(`0.6${TIE}MPa * 219.1${TIE}mm / (2 * 8.18${TIE}mm2)`) ?? '';
    expect(math).toContain('<mn>219.1</mn><mspace width="0.17em"/><mtext>mm</mtext>');
    expect(math).toContain('<mtext>mm²</mtext>');
    expect(equationMath(`1.2e-5${TIE}1/K * 3${TIE}K`)).toContain('<msup><mn>10</mn><mn>−5</mn></msup>');
  });

  test('is nothing where a line is no equation, and escapes what it says', () => {
    expect(equationMath('4.000 mm')).toBeUndefined();
    expect(equationMath('"a<b" == support')).toContain('a&lt;b');
  });
});
