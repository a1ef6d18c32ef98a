import { describe, expect, it } from 'vitest';
import { integrate } from '../../src/numeric/index.js';

describe('adaptive Simpson', () => {
  it('is exact for a cubic', () => {
    expect(integrate((x) => 4 * x ** 3 - 3 * x ** 2 + 1, 0, 2, 1e-6)).toBeCloseTo(10, 13);
  });

  it.each<[string, (x: number) => number, number, number, number]>([
    ['exp', Math.exp, 0, 1, Math.E - 1],
    ['sin over half a turn', Math.sin, 0, Math.PI, 2],
    ['1/x', (x) => 1 / x, 1, 10, Math.LN10],
    ['a bell', (x) => Math.exp(-x * x), -6, 6, Math.sqrt(Math.PI)],
    ['a quarter of a circle', (x) => Math.sqrt(1 - x * x), 0, 1, Math.PI / 4],
    ['1/(1 + x2)', (x) => 1 / (1 + x * x), 0, 1, Math.PI / 4],
  ])('keeps its tolerance for %s', (_, f, from, to, area) => {
    for (const tolerance of [1e-4, 1e-8, 1e-12]) {
      expect(Math.abs(integrate(f, from, to, tolerance) - area)).toBeLessThanOrEqual(Math.max(tolerance, 1e-14));
    }
  });

  it('turns its sign with its ends, and is nothing over nothing', () => {
    expect(integrate(Math.exp, 1, 0, 1e-10)).toBeCloseTo(1 - Math.E, 10);
    expect(integrate(Math.exp, 1, 1, 1e-10)).toBe(0);
  });

  it('ends when the tolerance is finer than float64 can tell', () => {
    let calls = 0;
    const counted = (x: number): number => {
      calls++;
      return Math.exp(x);
    };
    expect(integrate(counted, 0, 1, 0)).toBeCloseTo(Math.E - 1, 14);
    expect(calls).toBeLessThan(100_000);
  });

  it('says so when there is no number', () => {
    expect(integrate(() => Number.NaN, 0, 1, 1e-9)).toBeNaN();
    expect(integrate((x) => Math.sqrt(x - 0.5), 0, 1, 1e-9)).toBeNaN();
    expect(integrate(Math.exp, 0, Number.NaN, 1e-9)).toBeNaN();
    expect(integrate(Math.exp, 0, 1, Number.NaN)).toBeNaN();
  });
});
