import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hardnessGate, hardnessToReach } from '../../../src/acceptance/index.js';
import type { Ratio } from '../../../src/quantity/index.js';

const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('the hardness to reach', () => {
  it('is by hand 72 as the mean and 64 at each reading, of 80 qualified', () => {
    const { leastMean, leastSingle } = hardnessToReach({
      qualifiedHardness: 80,
      meanShare: 0.9 as Ratio,
      singleShare: 0.8 as Ratio,
    });
    expect([leastMean, leastSingle]).toEqual([72, 64]);
  });

  it('is where the gate turns: readings on it pass, readings a little below do not', () => {
    fc.assert(
      fc.property(span(20, 95), span(0.85, 1), span(0.7, 0.85), (qualifiedHardness, mean, single) => {
        const shares = { leastMean: mean as Ratio, leastSingle: single as Ratio };
        const { leastMean, leastSingle } = hardnessToReach({
          qualifiedHardness,
          meanShare: shares.leastMean,
          singleShare: shares.leastSingle,
        });
        const passes = (readings: number[]) =>
          hardnessGate({ scale: 'Shore D', readings, qualifiedHardness, leastReadings: 2, ...shares }).passes;
        expect(passes([leastMean, leastMean])).toBe(true);
        expect(passes([leastMean * 0.999, leastMean * 0.999])).toBe(false);
        const others = Math.min(100, 2 * leastMean - leastSingle);
        if (others < 100) {
          expect(passes([leastSingle, others])).toBe(true);
          expect(passes([leastSingle * 0.999, others, others])).toBe(false);
        }
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });
});
