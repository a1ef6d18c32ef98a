import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bisect } from '../../src/numeric/index.js';
import { ulp } from '../../verification/oracles/ulp.js';

describe('bisection', () => {
  it('finds the root of a cubic to the last bit', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (cube) => {
        const found = bisect((x) => x * x * x - cube, 0, 1e3);
        expect(Math.abs((found?.root ?? Number.NaN) - Math.cbrt(cube))).toBeLessThanOrEqual(2 * ulp(Math.cbrt(cube)));
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });

  it('returns the bracket that holds the root, and what is left of the function', () => {
    const found = bisect((x) => x * x - 2, 0, 2);
    if (found === undefined) throw new Error('the signs differ');
    const [low, high] = found.bracket;
    expect(low * low).toBeLessThan(2);
    expect(high * high).toBeGreaterThan(2);
    expect(high - low).toBe(ulp(low));
    expect(found.residual).toBe(found.root * found.root - 2);
    expect(Math.abs(found.residual)).toBeLessThanOrEqual(Math.min(2 - low * low, high * high - 2));
  });

  it('takes an end or a middle that is the root', () => {
    expect(bisect((x) => x, 0, 5)?.root).toBe(0);
    expect(bisect((x) => x - 5, 0, 5)?.root).toBe(5);
    expect(bisect((x) => x - 2.5, 0, 5)).toMatchObject({ root: 2.5, residual: 0 });
  });

  it('works on a falling function and on one that jumps', () => {
    expect(bisect((x) => 1 - x, 0, 3)?.root).toBe(1);
    expect(bisect((x) => (x < Math.PI ? -1 : 1), 0, 5)?.root).toBeCloseTo(Math.PI, 15);
  });

  it('gives the same bits in another unit of length', () => {
    const root = (scale: number): number => bisect((x) => (x / scale) ** 2 - 2, 0, 2 * scale)?.root ?? Number.NaN;
    expect(root(4096)).toBe(4096 * root(1));
    expect(root(2 ** -36)).toBe(2 ** -36 * root(1));
  });

  it('finds nothing without a change of sign, between ends out of order, or where the function is no number', () => {
    expect(bisect((x) => x * x + 1, -1, 1)).toBeUndefined();
    expect(bisect((x) => x, 1, -1)).toBeUndefined();
    expect(bisect((x) => Math.sqrt(x), -1, 1)).toBeUndefined();
    expect(bisect((x) => (Math.abs(x) < 0.5 ? Number.NaN : x), -1, 1)).toBeUndefined();
    expect(bisect((x) => x, Number.NEGATIVE_INFINITY, 1)).toBeUndefined();
    expect(bisect((x) => x, -1, Number.NaN)).toBeUndefined();
    expect(bisect((x) => 1 / x, -1, 0)).toBeUndefined();
  });
});
