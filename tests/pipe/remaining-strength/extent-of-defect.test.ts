import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  damageSafetyFactor,
  defectAspectRatio,
  defectCircleDiameter,
  designFactorOfSafetyFactor,
  strainAtStress,
} from '../../../src/pipe/index.js';
import { type Length, length, modulus, stress } from '../../../src/quantity/index.js';

const runs = { seed: 20261125, numRuns: 300 } as const;
const extent = fc.double({ min: 1e-3, max: 2, noNaN: true });

describe('the circle round a defect', () => {
  it('is the diagonal of its length and its width', () => {
    expect(length.inMm(defectCircleDiameter({ defectLength: length.mm(30), defectWidth: length.mm(40) }))).toBeCloseTo(
      50,
      9,
    );
  });

  it('encloses the longer extent, and no circle of both extents one after the other is smaller', () => {
    fc.assert(
      fc.property(extent, extent, (L, c) => {
        const d = defectCircleDiameter({ defectLength: L as Length, defectWidth: c as Length });
        expect(d).toBeGreaterThanOrEqual(Math.max(L, c));
        expect(d).toBeLessThanOrEqual((L + c) * (1 + 1e-15));
        expect(d).toBe(defectCircleDiameter({ defectLength: c as Length, defectWidth: L as Length }));
      }),
      runs,
    );
  });
});

describe('the longer over the shorter extent of a defect', () => {
  it('is the same whichever way the defect lies, and never below 1', () => {
    fc.assert(
      fc.property(extent, extent, (L, c) => {
        const ratio = defectAspectRatio({ defectLength: L as Length, defectWidth: c as Length });
        expect(ratio).toBe(defectAspectRatio({ defectLength: c as Length, defectWidth: L as Length }));
        expect(ratio).toBeGreaterThanOrEqual(1);
      }),
      runs,
    );
    expect(defectAspectRatio({ defectLength: length.mm(300), defectWidth: length.mm(20) })).toBeCloseTo(15, 12);
  });
});

describe('the factors on the strength of the pipe', () => {
  it('turn into each other', () => {
    expect(designFactorOfSafetyFactor({ safetyFactor: 1.25 })).toBeCloseTo(0.8, 15);
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 0.8, noNaN: true }), (designFactor) => {
        const safetyFactor = damageSafetyFactor({ designFactor });
        expect(designFactorOfSafetyFactor({ safetyFactor })).toBeCloseTo(designFactor, 12);
      }),
      runs,
    );
    expect(() => designFactorOfSafetyFactor({ safetyFactor: 0.9 })).toThrow(/no margin/u);
  });

  it('are the stated one where it stands in place of the least, and never below 1/F', () => {
    expect(damageSafetyFactor({ safetyFactor: 1.1, leastFactor: 1 })).toBe(1.1);
    expect(damageSafetyFactor({ safetyFactor: 1.1 })).toBe(1.25);
    expect(damageSafetyFactor({ designFactor: 0.5, safetyFactor: 1.1, leastFactor: 1 })).toBe(2);
  });
});

describe('the strain of the pipe at a stress', () => {
  it('is that of carbon steel at 207 MPa: one in a thousand', () => {
    expect(strainAtStress({ stress: stress.MPa(207), modulus: modulus.GPa(207) })).toBeCloseTo(1e-3, 15);
    expect(() => strainAtStress({ stress: stress.MPa(207), modulus: modulus.GPa(0) })).toThrow(/modulus/u);
  });
});
