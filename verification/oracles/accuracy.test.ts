import Decimal from 'decimal.js';
import { describe, expect, it } from 'vitest';
import { type AnyFormula, formula } from '../../src/formula/index.js';
import type { Length, Ratio } from '../../src/quantity/index.js';
import { accuracyOf, isClosedForm } from './accuracy.js';
import { exactDecimal } from './exact-decimal.js';
import { ulp } from './ulp.js';

/** The measure of accuracy, tried on sums whose error is known. */

const bare = { sources: [], evidence: { form: { tag: 'chosen' } }, limits: [] } as const;

interface Sides {
  readonly a: Length;
  readonly b: Length;
}

function of(expression: string, compute: (a: number, b: number) => number): AnyFormula {
  return formula<Sides, Ratio>({
    ...bare,
    id: `test/${expression}`,
    title: expression,
    compute: ({ a, b }) => compute(a, b) as Ratio,
    equation: { expression },
    inputs: {
      a: { symbol: 'a', kind: 'length', name: 'a', sample: [1, 2] },
      b: { symbol: 'b', kind: 'length', name: 'b', sample: [1, 2] },
    },
    output: { symbol: 'r', kind: 'ratio', name: 'r' },
  });
}

describe('the accuracy of a formula', () => {
  it('is half an ulp at most where one operation rounds once', () => {
    for (const one of [of('a * b', (a, b) => a * b), of('a / b', (a, b) => a / b), of('sqrt(a)', Math.sqrt)]) {
      const { maxUlp, rmsUlp, draws } = accuracyOf(one);
      expect(draws).toBe(200);
      expect(maxUlp).toBeLessThanOrEqual(0.5);
      expect(maxUlp).toBeGreaterThan(0.4);
      expect(rmsUlp).toBeGreaterThan(0.2);
      expect(rmsUlp).toBeLessThan(maxUlp);
    }
  });

  it('is large near a zero of a difference, where the condition number is large too', () => {
    const { maxUlp, worst } = accuracyOf(of('a * a - b * b', (a, b) => a * a - b * b));
    expect(maxUlp).toBeGreaterThan(20);
    const { a, b } = worst.bySymbol as { a: number; b: number };
    expect(worst.condition).toBeCloseTo((2 * (a * a + b * b)) / Math.abs(a * a - b * b), 3);
    expect(worst.condition).toBeGreaterThan(maxUlp / 4);
  });

  it('is what decimal.js finds at the worst input', () => {
    const { maxUlp, worst } = accuracyOf(of('a * a - b * b', (a, b) => a * a - b * b));
    const { a, b } = worst.bySymbol as { a: number; b: number };
    const Precise = Decimal.clone({ precision: 64 });
    const exact = (value: number) => new Precise(exactDecimal(value));
    const reference = exact(a).pow(2).minus(exact(b).pow(2));
    expect(reference.toPrecision(25)).toBe(worst.reference);
    const off = exact(worst.result)
      .minus(reference)
      .abs()
      .div(exact(ulp(reference.toNumber())));
    expect(off.toNumber()).toBeCloseTo(maxUlp, 10);
  });

  it('shows a wrong digit', () => {
    expect(accuracyOf(of('a * b', (a, b) => a * b * (1 + 1e-12))).maxUlp).toBeGreaterThan(1000);
  });

  it('is measured of closed forms alone', () => {
    const product = of('a * b', (a, b) => a * b);
    expect(isClosedForm(product)).toBe(true);
    expect(isClosedForm({ ...product, equation: { algorithm: 'by search' } })).toBe(false);
    expect(isClosedForm({ ...product, equation: { residual: 'r - a * b' } })).toBe(false);
    expect(
      isClosedForm({ ...product, output: { symbol: 'n', kind: 'count', name: 'n' } } as unknown as AnyFormula),
    ).toBe(false);
  });
});
