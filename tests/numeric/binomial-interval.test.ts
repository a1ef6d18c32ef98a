import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { binomialInterval } from '../../src/numeric/index.js';

describe('the interval of Clopper and Pearson', () => {
  it('is the closed form where nothing or everything was counted', () => {
    for (const n of [1, 10, 500]) {
      expect(binomialInterval(0, n, 0.95)).toEqual({ least: 0, most: expect.closeTo(1 - 0.025 ** (1 / n), 10) });
      expect(binomialInterval(n, n, 0.95)).toEqual({ least: expect.closeTo(0.025 ** (1 / n), 10), most: 1 });
    }
  });

  it('is that of the tables for 10 of 100', () => {
    const { least, most } = binomialInterval(10, 100, 0.95);
    expect([least.toFixed(4), most.toFixed(4)]).toEqual(['0.0490', '0.1762']);
  });

  it('holds the share that was counted, mirrors itself, and widens with its level', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), fc.double({ min: 0, max: 1, noNaN: true }), (trials, share) => {
        const hits = Math.round(share * trials);
        const narrow = binomialInterval(hits, trials, 0.9);
        const wide = binomialInterval(hits, trials, 0.99);
        expect(narrow.least).toBeLessThanOrEqual(hits / trials + 1e-12);
        expect(narrow.most).toBeGreaterThanOrEqual(hits / trials - 1e-12);
        expect(wide.least).toBeLessThanOrEqual(narrow.least);
        expect(wide.most).toBeGreaterThanOrEqual(narrow.most);
        const mirrored = binomialInterval(trials - hits, trials, 0.9);
        expect(mirrored.least).toBeCloseTo(1 - narrow.most, 9);
      }),
      { seed: 20261125, numRuns: 100 },
    );
  });

  it('covers at least as often as it says: summed over every count', () => {
    const [trials, level] = [25, 0.9];
    for (const p of [0.03, 0.2, 0.5, 0.77]) {
      let covered = 0;
      let term = (1 - p) ** trials;
      for (let hits = 0; hits <= trials; hits += 1) {
        const { least, most } = binomialInterval(hits, trials, level);
        if (p >= least && p <= most) covered += term;
        term *= ((trials - hits) / (hits + 1)) * (p / (1 - p));
      }
      expect(covered).toBeGreaterThanOrEqual(level);
    }
  });
});
