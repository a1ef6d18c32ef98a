import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lapShearStress, pullOffStress, pullOffStressSmallDolly, wrinkleLimit } from '../../../src/acceptance/index.js';
import { type Force, force, type Length, length, type Ratio } from '../../../src/quantity/index.js';
import { evenSpan, run } from '../../properties/spans.js';

describe('stress at break', () => {
  it('times its area is the force, in shear and in tension', () => {
    run(
      fc.property(evenSpan(0, 20000), evenSpan(0.005, 0.05), evenSpan(0.005, 0.05), (F, a, b) => {
        const failureForce = F as Force;
        expect(lapShearStress({ force: failureForce, width: a as Length, overlap: b as Length }) * a * b).toBeCloseTo(
          F,
          6,
        );
        expect(pullOffStress({ force: failureForce, diameter: a as Length }) * Math.PI * (a / 2) * (a / 2)).toBeCloseTo(
          F,
          6,
        );
      }),
    );
  });

  it('from a dolly below 20 mm is noted', () => {
    expect(pullOffStressSmallDolly({ force: force.N(100), diameter: length.mm(7) })).toBe(true);
    expect(pullOffStressSmallDolly({ force: force.N(100), diameter: length.mm(20) })).toBe(false);
  });
});

describe('the highest wrinkle', () => {
  it('is never above 2.5 mm nor above a fifth of the laminate, and is one of the two', () => {
    run(
      fc.property(evenSpan(0.0005, 0.05), (t) => {
        const limit = wrinkleLimit({ laminateThickness: t as Length });
        expect(limit).toBeLessThanOrEqual(0.0025);
        expect(limit).toBeLessThanOrEqual(t / 5 + 1e-15);
        expect(Math.min(Math.abs(limit - 0.0025), Math.abs(limit - t / 5))).toBeLessThan(1e-15);
      }),
    );
    expect(() => wrinkleLimit({ laminateThickness: length.mm(5), share: 1.1 as Ratio })).toThrow(/share/u);
  });
});
