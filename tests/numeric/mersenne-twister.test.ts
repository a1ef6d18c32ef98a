import { describe, expect, it } from 'vitest';
import { mersenneTwister, openFraction } from '../../src/numeric/index.js';

describe('the Mersenne Twister', () => {
  it('gives as its 10,000th number what the standard of C++ states for its default seed', () => {
    const next = mersenneTwister(5489);
    let last = 0;
    for (let i = 0; i < 10_000; i += 1) last = next();
    expect(last).toBe(4_123_659_995);
  });

  it('gives the same numbers for the same seed, and others for another', () => {
    const first = (seed: number): number[] => Array.from({ length: 5 }, mersenneTwister(seed));
    expect(first(7)).toEqual(first(7));
    expect(first(7)).not.toEqual(first(8));
    expect(first(2 ** 32 + 7)).toEqual(first(7));
  });

  it('makes fractions that are never 0 and never 1', () => {
    expect(openFraction(0)).toBeGreaterThan(0);
    expect(openFraction(2 ** 32 - 1)).toBeLessThan(1);
    const next = mersenneTwister(1);
    let sum = 0;
    for (let i = 0; i < 100_000; i += 1) sum += openFraction(next());
    // Four standard deviations of the mean of so many.
    expect(Math.abs(sum / 100_000 - 0.5)).toBeLessThan(4 / Math.sqrt(12 * 100_000));
  });
});
