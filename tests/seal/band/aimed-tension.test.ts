import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { force, type Length, type Ratio } from '../../../src/quantity/index.js';
import { aimedTension, fastenerTorque, tensionFromTorque } from '../../../src/seal/index.js';

describe('the tension to tighten to', () => {
  it('leaves the tension that is needed at the low end of the scatter of its torque', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 50_000, noNaN: true }),
        fc.double({ min: 0, max: 0.6, noNaN: true }),
        (needed, scatter) => {
          const thread = { nutFactor: 0.2, threadDiameter: 0.008 as Length };
          const tension = aimedTension({ neededTension: force.N(needed), scatter: scatter as Ratio });
          const torque = fastenerTorque({ ...thread, tension });
          const { low } = tensionFromTorque({ ...thread, torque, scatter: scatter as Ratio });
          expect(force.inN(low) / needed).toBeCloseTo(1, 12);
        },
      ),
      { seed: 20261125, numRuns: 200 },
    );
  });

  it('is the needed tension itself where nothing scatters', () => {
    expect(aimedTension({ neededTension: force.N(1200), scatter: 0 as Ratio })).toBe(1200);
  });
});
