import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { equivalentAxialForce, equivalentPressure } from '../../../src/laminate/index.js';
import type { Force, GaugePressure, Length, Moment } from '../../../src/quantity/index.js';
import { near, seeded, span } from '../../properties/spans.js';

const loads = fc.record({
  pressure: span<GaugePressure>(1e5, 2e7),
  outsideDiameter: span<Length>(0.05, 1.2),
  axialForce: span<Force>(-1e6, 1e6),
  shearForce: span<Force>(0, 1e5),
  bendingMoment: span<Moment>(0, 1e5),
  torque: span<Moment>(0, 1e5),
});
const none = { axialForce: 0 as Force, shearForce: 0 as Force, bendingMoment: 0 as Moment, torque: 0 as Moment };

describe('the equivalent loads', () => {
  it('without external loads are the end force and the pressure themselves', () => {
    fc.assert(
      fc.property(loads, (given) => {
        const { pressure: P, outsideDiameter: D } = given;
        near(equivalentAxialForce({ ...given, ...none }), P * Math.PI * (D / 2) ** 2, 1e-14);
        expect(equivalentPressure({ ...given, ...none })).toBe(P);
      }),
      seeded,
    );
  });

  it('are never below the loads without any of the externals, and count a push as a pull', () => {
    fc.assert(
      fc.property(loads, (given) => {
        const all = equivalentAxialForce(given);
        for (const name of ['axialForce', 'shearForce', 'bendingMoment', 'torque'] as const) {
          expect(all).toBeGreaterThanOrEqual(equivalentAxialForce({ ...given, [name]: 0 }));
        }
        expect(equivalentAxialForce({ ...given, axialForce: -given.axialForce as Force })).toBe(all);
        expect(equivalentPressure(given)).toBeGreaterThanOrEqual(given.pressure);
      }),
      seeded,
    );
  });

  it('exceed the Tresca stress of a thin ring under pressure and shear', () => {
    // x is the shear flow over the hoop force; Tresca gives sqrt(1 + 4 x^2).
    fc.assert(
      fc.property(loads, (given) => {
        const { pressure: P, outsideDiameter: D, shearForce: F, torque: M } = given;
        const x = (2 * (F + (2 * M) / D)) / (Math.PI * D) / ((P * D) / 1);
        const pressure = equivalentPressure(given);
        expect(pressure / P).toBeGreaterThanOrEqual(Math.sqrt(1 + 4 * x * x) * (1 - 1e-14));
      }),
      seeded,
    );
  });
});
