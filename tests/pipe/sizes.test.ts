import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { metalLossDepth, outsideRadius, remainingWall } from '../../src/pipe/index.js';
import { length } from '../../src/quantity/index.js';

const settings = { seed: 20261125, numRuns: 300 };
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('the wall that a metal loss leaves', () => {
  it('is what its depth takes off, and gives that depth back', () => {
    fc.assert(
      fc.property(span(0.002, 0.03), span(0, 1), (t, share) => {
        const wallThickness = length.m(t);
        const defectDepth = length.m(t * share);
        const left = remainingWall({ wallThickness, defectDepth });
        expect(metalLossDepth({ wallThickness, remainingWall: left })).toBeCloseTo(defectDepth, 15);
      }),
      settings,
    );
    expect(remainingWall({ wallThickness: length.mm(8), defectDepth: length.mm(8) })).toBe(0);
  });

  it('is none where the loss is deeper than the wall', () => {
    expect(() => remainingWall({ wallThickness: length.mm(8), defectDepth: length.mm(8.1) })).toThrow(
      /defectDepth is .* must be at most the nominal wall/,
    );
  });
});

describe('the outside radius', () => {
  it('is the wall that leaves no bore', () => {
    const radius = outsideRadius({ outsideDiameter: length.mm(219.1) });
    expect(length.inMm(radius)).toBeCloseTo(109.55, 12);
  });
});
