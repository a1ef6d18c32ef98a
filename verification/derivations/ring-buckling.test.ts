import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ringBuckling } from '../../src/mechanics/index.js';
import type { Length, Modulus } from '../../src/quantity/index.js';
import { bucklingPressure } from './ring-buckling.js';

const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('a ring under external pressure, as the root of its bending', () => {
  it('buckles at three times the pressure that the laminate of case C18 is allowed', () => {
    const laminate = { radius: 323.9 / 2, thickness: 5.968561, modulus: 23800, poissonRatio: Math.sqrt(0.0072) };
    expect(Math.abs(bucklingPressure(laminate) / 3 - 0.1)).toBeLessThan(1e-7);
  });

  it("buckles at the pressure of 'mechanics/ring-buckling' when its radius is half of the outside diameter", () => {
    fc.assert(
      fc.property(span(0.05, 1.2), span(0.005, 0.05), span(1e9, 210e9), span(0, 0.45), (D, part, E, nu) => {
        const t = part * D;
        const found = ringBuckling({
          outsideDiameter: D as Length,
          wallThickness: t as Length,
          modulus: E as Modulus,
          poissonRatio: nu,
        });
        const root = bucklingPressure({ radius: D / 2, thickness: t, modulus: E, poissonRatio: nu });
        expect(Math.abs(found - root)).toBeLessThanOrEqual(1e-9 * root);
      }),
      { seed: 20261125, numRuns: 20 },
    );
  });
});
