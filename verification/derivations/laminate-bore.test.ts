import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { laminateBoreRatio } from '../../src/laminate/index.js';
import type { Length } from '../../src/quantity/index.js';
import { wallState } from './thick-cylinder.js';

describe('the bore of a thick laminate, by the thick cylinder integrated step by step', () => {
  it('carries what laminate-bore-ratio says above the mean, C25 among them', () => {
    const ratioByMarch = (D: number, t: number) => {
      const wall = {
        innerRadius: D / 2,
        outerRadius: D / 2 + t,
        internalPressure: 1,
        externalPressure: 0,
        poissonRatio: 0.3,
      };
      return wallState(wall, D / 2).hoop / (D / 2 / t);
    };
    expect(ratioByMarch(200, 200 / 12)).toBeCloseTo(1.089744, 6);
    const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(span(0.05, 1.2), span(0.01, 0.3), (D, part) => {
        const t = part * D;
        const ratio = laminateBoreRatio({ outsideDiameter: D as Length, laminateThickness: t as Length });
        expect(Math.abs(ratio - ratioByMarch(D, t))).toBeLessThan(1e-9);
      }),
      { seed: 20261125, numRuns: 20 },
    );
  });
});
