import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { effectiveArea } from '../../../src/pipe/index.js';
import { length, stress } from '../../../src/quantity/index.js';

const PIPE = { outsideDiameter: length.mm(323.9), wallThickness: length.mm(9.53), flowStress: stress.MPa(390) };

/** The lowest pressure over every pair of points, each by itself. */
function byBruteForce(profile: readonly { position: number; depth: number }[]): number {
  const { outsideDiameter: D, wallThickness: t, flowStress: S } = PIPE;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < profile.length; i++) {
    let area = 0;
    for (let j = i + 1; j < profile.length; j++) {
      const [a, b] = [profile[j - 1], profile[j]];
      if (a === undefined || b === undefined) continue;
      area += ((b.position - a.position) * (a.depth + b.depth)) / 2;
      const along = b.position - (profile[i]?.position ?? 0);
      const z = along ** 2 / (D * t);
      const M = z <= 50 ? Math.sqrt(1 + 0.6275 * z - 0.003375 * z ** 2) : 0.032 * z + 3.3;
      const share = area / (along * t);
      least = Math.min(least, (S * 2 * t * (1 - share)) / (D * (1 - share / M)));
    }
  }
  return least;
}

/** Steps, and depths that go deep here and there. */
const points = fc.record({
  step: fc.double({ min: 1e-4, max: 0.02, noNaN: true }),
  depth: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 0.007, noNaN: true })),
});

describe('the weakest sub-length', () => {
  it('is that of a search through every pair of points, whatever the profile looks like', () => {
    fc.assert(
      fc.property(fc.array(points, { minLength: 2, maxLength: 900, size: 'max' }), (drawn) => {
        let position = 0;
        const profile = drawn.map(({ step, depth }) => {
          position += step;
          return { position, depth };
        });
        const { failurePressure } = effectiveArea({ ...PIPE, profile: profile as never });
        const expected = byBruteForce(profile);
        expect(Math.abs(failurePressure / expected - 1)).toBeLessThan(1e-9);
      }),
      { seed: 20261125, numRuns: 60 },
    );
  });

  it('is found where slow waves make many nearly alike', () => {
    const profile = Array.from({ length: 1200 }, (_, index) => ({
      position: index * 0.002,
      depth: 0.004 + 0.002 * Math.sin(index / 40) + 0.0004 * Math.sin(index * 1.7),
    }));
    const { failurePressure } = effectiveArea({ ...PIPE, profile: profile as never });
    expect(Math.abs(failurePressure / byBruteForce(profile) - 1)).toBeLessThan(1e-9);
  });

  it('of two hundred thousand points is answered, flat or rough', () => {
    for (const rough of [0, 0.003]) {
      const profile = Array.from({ length: 200_000 }, (_, index) => ({
        position: length.mm(index),
        depth: (0.003 + rough * Math.abs(Math.sin(index ** 2))) as never,
      }));
      expect(effectiveArea({ ...PIPE, profile }).failurePressure).toBeGreaterThan(0);
    }
  });
});
