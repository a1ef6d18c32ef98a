import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countDown, countUp } from '../../src/numeric/index.js';

const settings = { seed: 20261125, numRuns: 2000 };
const counts = fc.integer({ min: 0, max: 1e6 });

describe('counts', () => {
  it('take a whole number with the rounding of a quotient for that number', () => {
    expect(countUp(3.0000000000000004)).toBe(3);
    expect(countDown(2.9999999999999996)).toBe(3);
    expect(countDown(1 / (1 - 2 / 3))).toBe(3);
    expect(countDown(1 / (1 - 0.95))).toBe(20);
    expect(countUp(0.3 / 0.1)).toBe(3);
    expect(countUp(1.1 * 1.1 * 100)).toBe(121);
  });

  it('go up to the next whole number, and down to the last one', () => {
    expect(countUp(3.001)).toBe(4);
    expect(countDown(3.999)).toBe(3);
    expect(countUp(0)).toBe(0);
    expect(countDown(0)).toBe(0);
    expect(countUp(0.001)).toBe(1);
    expect(countUp(-0.5)).toBe(-0);
  });

  it('of a count times a length over that length are that count', () => {
    fc.assert(
      fc.property(counts, fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (count, length) => {
        expect(countUp((count * length) / length)).toBe(count);
        expect(countDown((count * length) / length)).toBe(count);
      }),
      settings,
    );
  });

  it('never differ by more than one, nor lie off the amount by more than one', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e14, noNaN: true }), (amount) => {
        const [up, down] = [countUp(amount), countDown(amount)];
        expect(up - down === 0 || up - down === 1).toBe(true);
        expect(Math.abs(up - amount)).toBeLessThan(1);
        expect(Math.abs(down - amount)).toBeLessThan(1);
      }),
      settings,
    );
  });

  it('of what is not a number are not numbers', () => {
    expect(countUp(Number.NaN)).toBeNaN();
    expect(countDown(Number.NaN)).toBeNaN();
    expect(countUp(Number.POSITIVE_INFINITY)).toBe(Number.POSITIVE_INFINITY);
  });
});
