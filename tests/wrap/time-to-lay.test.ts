import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { highestReading, warmestBehindReading } from '../../src/cure/index.js';
import type { Ratio, Temperature, TemperatureDifference, Time } from '../../src/quantity/index.js';
import { longestCharge, timeToLay } from '../../src/wrap/index.js';

const seeded = { seed: 20261125, numRuns: 200 };

describe('the time from the first contact of resin and hardener to the last turn', () => {
  it('is the stated share of the working time: 24 of 30 minutes', () => {
    expect(timeToLay({ workingTime: 1800 as Time, share: 0.8 as Ratio })).toBeCloseTo(1440, 9);
  });

  it.each([0, 1.01, Number.NaN])('refuses a share of %d', (share) => {
    expect(() => timeToLay({ workingTime: 1800 as Time, share: share as Ratio })).toThrow(/share/);
  });
});

describe('the longest charge', () => {
  it('is refused where mixing and soaking take all of the working time', () => {
    const charge = (workingTime: number) => () =>
      longestCharge({ workingTime, mixingTime: 300, soakTime: 120, layingSpeed: 0.05, crews: 1 } as never);
    expect(charge(420)).toThrow(expect.objectContaining({ code: 'no-solution', parameter: 'workingTime', limit: 420 }));
    expect(charge(421)()).toBeGreaterThan(0);
  });
});

describe('a reading and what stands behind it', () => {
  it('undo each other, and lie an error apart', () => {
    const kelvin = fc.double({ min: 200, max: 400, noNaN: true });
    const wrong = fc.double({ min: 0, max: 10, noNaN: true });
    fc.assert(
      fc.property(kelvin, wrong, (shown, off) => {
        const [reading, error] = [shown as Temperature, off as TemperatureDifference];
        const warmest = warmestBehindReading({ reading, error });
        expect(warmest - reading).toBeCloseTo(error, 9);
        expect(highestReading({ warmest, error })).toBeCloseTo(reading, 9);
      }),
      seeded,
    );
  });
});
