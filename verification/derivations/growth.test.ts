import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { profileAtEndOfLife } from '../../src/pipe/index.js';
import type { CorrosionRate, Length, Time } from '../../src/quantity/index.js';
import { grownInSteps } from './growth.js';

const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const tracks = fc
  .record({
    start: real(-5, 5),
    spans: fc.array(fc.record({ width: real(0.002, 0.3), loss: fc.oneof(fc.constant(0), real(0, 0.01)) }), {
      minLength: 2,
      maxLength: 15,
    }),
  })
  .map(({ start, spans }) => {
    let at = start;
    return spans.map(({ width, loss }) => {
      at += width;
      return { at, loss };
    });
  });

describe("'pipe/profile-at-end-of-life' against growth in a thousand steps", () => {
  it('reaches the same positions and the same depths', () => {
    fc.assert(
      fc.property(
        tracks,
        real(0, 2e-11),
        real(0, 2e-11),
        real(0, 1e9),
        real(0.01, 0.03),
        (track, deepening, lengthening, time, deepest) => {
          const found = profileAtEndOfLife({
            profile: track.map(({ at, loss }) => ({ position: at as Length, depth: loss as Length })),
            depthRate: deepening as CorrosionRate,
            lengthRate: lengthening as CorrosionRate,
            life: time as Time,
            greatestDepth: deepest as Length,
          });
          const expected = grownInSteps(track, { deepening, lengthening, deepest }, time, 1000);
          expect(found.profile).toHaveLength(expected.length);
          for (const [i, { at, loss }] of expected.entries()) {
            expect(Math.abs((found.profile[i]?.position ?? 0) - at)).toBeLessThan(1e-12);
            expect(Math.abs((found.profile[i]?.depth ?? 0) - loss)).toBeLessThan(1e-13);
          }
          const [first, last] = [expected[0], expected.at(-1)];
          expect(Math.abs(found.length - ((last?.at ?? 0) - (first?.at ?? 0)))).toBeLessThan(1e-12);
        },
      ),
      { seed: 20261125, numRuns: 100 },
    );
  });
});
