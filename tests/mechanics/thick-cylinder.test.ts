import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  thickCylinderAxialStress,
  thickCylinderHoopStress,
  thickCylinderRadialStress,
} from '../../src/mechanics/index.js';
import { type GaugePressure, gauge, type Length, length } from '../../src/quantity/index.js';
import { span as real } from '../properties/spans.js';

const runs = { seed: 20261125, numRuns: 300 };

/** A cylinder, and a radius in its wall. */
const cylinders = fc
  .tuple(real(0, 100e6), real(0, 100e6), real(0.005, 1), real(1.005, 4), real(0, 1))
  .map(([pi, po, ri, grow, share]) => ({
    internalPressure: pi as GaugePressure,
    externalPressure: po as GaugePressure,
    innerRadius: ri as Length,
    outerRadius: (ri * grow) as Length,
    radius: Math.min(ri + ri * (grow - 1) * share, ri * grow) as Length,
  }));

describe('thick cylinder', () => {
  it('holds the sum of hoop and radial stress constant over the wall, at twice the closed-end axial stress', () => {
    fc.assert(
      fc.property(cylinders, (c) => {
        const sum = thickCylinderHoopStress(c) + thickCylinderRadialStress(c);
        const { internalPressure, externalPressure, innerRadius, outerRadius } = c;
        const ends = { internalPressure, externalPressure, innerRadius, outerRadius, ends: 'closed' } as const;
        const scale = ((1 + c.internalPressure + c.externalPressure) * outerRadius) / (outerRadius - innerRadius);
        expect(Math.abs(sum - 2 * thickCylinderAxialStress(ends))).toBeLessThanOrEqual(1e-12 * scale);
      }),
      runs,
    );
  });

  it('carries the negative pressure of each surface as its radial stress', () => {
    fc.assert(
      fc.property(cylinders, (c) => {
        const scale = 1 + c.internalPressure + c.externalPressure;
        const bore = thickCylinderRadialStress({ ...c, radius: c.innerRadius });
        const outside = thickCylinderRadialStress({ ...c, radius: c.outerRadius });
        expect(Math.abs(bore + c.internalPressure) / scale).toBeLessThan(1e-12);
        expect(Math.abs(outside + c.externalPressure) / scale).toBeLessThan(1e-12);
      }),
      runs,
    );
  });

  it('is under its pressure alone, everywhere, when both pressures are equal', () => {
    fc.assert(
      fc.property(cylinders, (c) => {
        const both = { ...c, externalPressure: c.internalPressure };
        const scale = ((1 + c.internalPressure) * c.outerRadius) / (c.outerRadius - c.innerRadius);
        expect(Math.abs(thickCylinderHoopStress(both) + c.internalPressure) / scale).toBeLessThan(1e-12);
        expect(Math.abs(thickCylinderRadialStress(both) + c.internalPressure) / scale).toBeLessThan(1e-12);
      }),
      runs,
    );
  });

  it('has its highest hoop stress at the bore when the pressure is inside', () => {
    fc.assert(
      fc.property(cylinders, (c) => {
        const inside = { ...c, externalPressure: gauge.Pa(0) };
        const bore = thickCylinderHoopStress({ ...inside, radius: inside.innerRadius });
        expect(thickCylinderHoopStress(inside)).toBeLessThanOrEqual(bore * (1 + 1e-12));
      }),
      runs,
    );
  });

  it('has no axial stress behind sliding seals, and 2 nu times the closed-end value between anchors', () => {
    const cylinder = { internalPressure: gauge.MPa(20), innerRadius: length.m(0.03), outerRadius: length.m(0.05) };
    const closed = thickCylinderAxialStress({ ...cylinder, ends: 'closed' });
    expect(thickCylinderAxialStress({ ...cylinder, ends: 'open' })).toBe(0);
    for (const poissonRatio of [0, 0.25, 0.3, 0.5]) {
      const restrained = thickCylinderAxialStress({ ...cylinder, ends: 'restrained', poissonRatio });
      expect(restrained).toBeCloseTo(2 * poissonRatio * closed, 6);
    }
    expect(closed).toBeCloseTo((20e6 * 0.03 ** 2) / (0.05 ** 2 - 0.03 ** 2), 6);
  });

  it('refuses a radius outside the wall and a bore that is not inside the outside', () => {
    const c = {
      internalPressure: gauge.MPa(20),
      innerRadius: length.m(0.03),
      outerRadius: length.m(0.05),
      radius: length.m(0.04),
    };
    expect(() => thickCylinderHoopStress({ ...c, radius: length.m(0.029) })).toThrow('must be from 0.03 to 0.05');
    expect(() => thickCylinderRadialStress({ ...c, radius: length.m(0.051) })).toThrow('must be from 0.03 to 0.05');
    expect(() => thickCylinderHoopStress({ ...c, innerRadius: length.m(0.05) })).toThrow('outerRadius - innerRadius');
    expect(() => thickCylinderRadialStress({ ...c, innerRadius: length.m(0.05) })).toThrow('outerRadius - innerRadius');
    expect(() => thickCylinderAxialStress({ ...c, outerRadius: length.m(0.02), ends: 'closed' })).toThrow(
      'outerRadius',
    );
  });
});
