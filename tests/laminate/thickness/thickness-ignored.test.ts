import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  forceIgnoredAxial,
  pressureIgnoredHoop,
  thicknessIgnoredAxial,
  thicknessIgnoredHoop,
} from '../../../src/laminate/index.js';
import type { Force, GaugePressure, Length, Modulus, Strain } from '../../../src/quantity/index.js';
import { near, rising, seeded, span } from '../../properties/spans.js';

const laminate = fc.record({
  pressure: span<GaugePressure>(1e5, 2e7),
  outsideDiameter: span<Length>(0.02, 1.2),
  hoopModulus: span<Modulus>(8e9, 80e9),
  axialModulus: span<Modulus>(4e9, 40e9),
  poissonRatio: span(0, 0.4),
  allowableStrain: span<Strain>(5e-4, 4e-3),
});

describe('the thickness when the laminate carries everything', () => {
  it('without an axial force relieves nothing: pressure times radius over strain and modulus', () => {
    fc.assert(
      fc.property(laminate, (given) => {
        const { pressure: P, outsideDiameter: D, hoopModulus: E, allowableStrain: eps } = given;
        near(thicknessIgnoredHoop(given), (P * (D / 2)) / eps / E, 1e-14);
      }),
      seeded,
    );
  });

  it('is relieved round the pipe by a pull along it, and burdened by a push', () => {
    fc.assert(
      fc.property(laminate, rising<Force>(-1e6, 1e6), (given, [push, pull]) => {
        expect(thicknessIgnoredHoop({ ...given, axialForce: push })).toBeGreaterThanOrEqual(
          thicknessIgnoredHoop({ ...given, axialForce: pull }),
        );
      }),
      seeded,
    );
  });

  it('never falls with more pressure round the pipe, or more force along it', () => {
    fc.assert(
      fc.property(laminate, rising<GaugePressure>(0, 2e7), rising<Force>(0, 3e6), (given, [p1, p2], [f1, f2]) => {
        expect(thicknessIgnoredHoop({ ...given, pressure: p2 })).toBeGreaterThanOrEqual(
          thicknessIgnoredHoop({ ...given, pressure: p1 }),
        );
        expect(thicknessIgnoredAxial({ ...given, axialForce: f2 })).toBeGreaterThanOrEqual(
          thicknessIgnoredAxial({ ...given, axialForce: f1 }),
        );
      }),
      seeded,
    );
  });

  it('gives back the pressure and the force it was made for', () => {
    fc.assert(
      fc.property(laminate, span<Force>(-1e5, 3e6), (given, axialForce) => {
        const t = thicknessIgnoredHoop({ ...given, axialForce });
        if (t > 0) near(pressureIgnoredHoop({ ...given, axialForce, laminateThickness: t }), given.pressure, 1e-9);
        const force = Math.abs(axialForce) as Force;
        const ta = thicknessIgnoredAxial({ ...given, axialForce: force });
        if (ta > 0) near(forceIgnoredAxial({ ...given, laminateThickness: ta }), force, 1e-9);
      }),
      seeded,
    );
  });

  it('with closed ends is the textbook form with half of the ratio of Poisson', () => {
    fc.assert(
      fc.property(laminate, (given) => {
        const { pressure: P, outsideDiameter: D, hoopModulus: Ec, axialModulus: Ea, poissonRatio: nu } = given;
        const axialForce = ((Math.PI * P * D * D) / 4) as Force;
        near(
          thicknessIgnoredHoop({ ...given, axialForce }),
          (P * D * (1 - nu / 2)) / (2 * given.allowableStrain * Ec),
          1e-12,
        );
        const axial = ((P * D) / (2 * given.allowableStrain)) * (1 / (2 * Ea) - nu / Ec);
        expect(Math.abs(thicknessIgnoredAxial({ ...given, axialForce }) - Math.max(0, axial))).toBeLessThanOrEqual(
          (1e-12 * P * D * (1 / Ea + 1 / Ec)) / given.allowableStrain,
        );
      }),
      seeded,
    );
  });

  it('is refused as a pressure when a push alone takes the strain of a thin laminate', () => {
    const given = {
      laminateThickness: 0.001 as Length,
      outsideDiameter: 0.1 as Length,
      hoopModulus: 2e10 as Modulus,
      poissonRatio: 0.3,
      allowableStrain: 0.001 as Strain,
      axialForce: -1e6 as Force,
    };
    expect(() => pressureIgnoredHoop(given)).toThrow('laminateThickness is 0.001 m; must be at least 0.0477');
  });
});
