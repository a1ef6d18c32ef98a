import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { historyDuration } from '../../src/cure/index.js';
import type { Length, Mass, Temperature, Time } from '../../src/quantity/index.js';
import { mixedMass, pourDepth } from '../../src/resin/index.js';

/** Sums, against an abacus: every amount is so many whole grams, seconds or metres, counted one by one. */

const runs = { seed: 20261125, numRuns: 200 };

const counted = (amounts: readonly number[]): number => {
  let beads = 0;
  for (const amount of amounts) for (let bead = 0; bead < amount; bead++) beads++;
  return beads;
};

describe("'resin/mixed-mass' against counting grams", () => {
  it('is all that was weighed', () => {
    const batch = fc.record({ base: fc.integer({ min: 0, max: 3000 }), hardener: fc.integer({ min: 0, max: 900 }) });
    fc.assert(
      fc.property(fc.array(batch, { minLength: 1, maxLength: 8 }), (grams) => {
        const batches = grams.map(({ base, hardener }) => ({ base: base as Mass, hardener: hardener as Mass }));
        expect(mixedMass({ batches })).toBe(counted(grams.flatMap(({ base, hardener }) => [base, hardener])));
      }),
      runs,
    );
  });
});

describe("'cure/history-duration' against counting seconds", () => {
  it('is the time from the first hour to the last', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 90_000 }), { minLength: 1, maxLength: 8 }), (seconds) => {
        const steps = seconds.map((duration) => ({ duration: duration as Time, temperature: 290 as Temperature }));
        expect(historyDuration({ steps })).toBe(counted(seconds));
      }),
      runs,
    );
  });
});

describe("'resin/pour-depth' against counting layers", () => {
  it('is every layer from the bottom of the defect to the top of the filler', () => {
    const layers = fc.integer({ min: 0, max: 40 });
    fc.assert(
      fc.property(layers, layers, (above, below) => {
        const pour = { thicknessOverDefect: above as Length, depth: below as Length };
        expect(pourDepth(pour)).toBe(counted([above, below]));
      }),
      runs,
    );
  });
});
