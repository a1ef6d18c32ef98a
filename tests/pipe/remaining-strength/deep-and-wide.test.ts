import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { axialFailureStress, type RemainingStrengthInput, remainingStrength } from '../../../src/pipe/index.js';
import { force, gauge, length, stress } from '../../../src/quantity/index.js';

const runs = { seed: 20261125, numRuns: 300 };
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const losses = fc
  .record({
    D: span(0.06, 1.2),
    slenderness: span(12, 90),
    length: span(0.01, 3),
    share: span(0.01, 1),
    grade: fc.constantFrom([241, 414], [359, 455], [555, 625]),
    factor: span(0.4, 0.8),
    cap: span(0.5, 2),
  })
  .map(({ D, slenderness, length: L, share, grade: [y = 0, u = 0], factor, cap }): RemainingStrengthInput => {
    const t = D / slenderness;
    return {
      outsideDiameter: length.m(D),
      wallThickness: length.m(t),
      defectDepth: length.m(0),
      defectLength: length.m(L),
      defectWidth: length.m(share * Math.PI * D),
      yieldStrength: stress.MPa(y),
      tensileStrength: stress.MPa(u),
      designFactor: factor,
      maximumPressure: gauge.Pa(cap * 2 * y * 1e6 * factor * (t / D)),
    };
  });

describe('a loss that grows', () => {
  it('never gains by depth, across the depth at which the methods end and down to no wall', () => {
    fc.assert(
      fc.property(losses, span(0.02, 0.99), span(0.02, 0.99), (loss, x, y) => {
        const at = (share: number) =>
          remainingStrength({ ...loss, defectDepth: length.m(share * loss.wallThickness) }).safePressure;
        expect(at(Math.max(x, y))).toBeLessThanOrEqual(at(Math.min(x, y)) * (1 + 1e-12));
        const end = Math.min(0.8, 1 - 0.0013 / loss.wallThickness);
        if (end > 0.02) expect(at(Math.min(0.999, end + 1e-6))).toBeLessThanOrEqual(at(end - 1e-6));
      }),
      runs,
    );
  });

  it('never gains by width, and one of unknown width counts as all round', () => {
    fc.assert(
      fc.property(losses, span(0.05, 0.79), span(0.1, 1), (loss, x, part) => {
        const deep = { ...loss, defectDepth: length.m(x * loss.wallThickness) };
        const whole = remainingStrength(deep).safePressure;
        const narrow = { ...deep, defectWidth: length.m(part * (loss.defectWidth ?? 0)) };
        expect(whole).toBeLessThanOrEqual(remainingStrength(narrow).safePressure * (1 + 1e-12));
        const { defectWidth: _, ...unknown } = deep;
        expect(remainingStrength(unknown).safePressure).toBeLessThanOrEqual(whole * (1 + 1e-12));
      }),
      runs,
    );
  });

  it('carries less where a force pulls along the pipe, and no more where it pushes', () => {
    fc.assert(
      fc.property(losses, span(0.05, 0.79), span(1e3, 1e6), (loss, x, N) => {
        const at = (newton: number) =>
          remainingStrength({ ...loss, defectDepth: length.m(x * loss.wallThickness), axialForce: force.N(newton) });
        expect(at(N).safePressure).toBeLessThanOrEqual(at(0).safePressure);
        expect(at(-N).safePressure).toBe(at(0).safePressure);
      }),
      runs,
    );
  });

  it('all round, and barely there, has the axial stress of a plain section', () => {
    const pipe = { outsideDiameter: length.mm(168.3), wallThickness: length.mm(7.11), flowStress: stress.MPa(265) };
    const at = (depth: number, width: number) =>
      axialFailureStress({ ...pipe, defectDepth: length.mm(depth), defectWidth: length.mm(width) });
    expect(at(0, 100).failureStress / 265e6).toBeCloseTo(1, 12);
    expect(at(5, 1e-6).failureStress / 265e6).toBeCloseTo(1, 6);
    const round = at(5, Math.PI * 168.3);
    // The least lies before the whole way round, below the share of the wall that is left.
    expect(round.failureStress / 265e6).toBeLessThan(2.11 / 7.11);
    expect(round.halfAngle).toBeLessThan(Math.PI);
    expect(at(5, 528.7303)).toEqual(round);
    expect(() => at(5, 540)).toThrow(/all round/u);
  });
});
