import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  equivalentAxialForce,
  forceSharingAxial,
  pressureSharingHoop,
  pressureSharingLive,
  substratePressure,
  thicknessSharingAxial,
  thicknessSharingHoop,
  thicknessSharingLive,
  wallOfSubstratePressure,
} from '../../../src/laminate/index.js';
import type { Force, GaugePressure, Length, Modulus, Moment, Stress } from '../../../src/quantity/index.js';
import { near, rising, seeded, span } from '../../properties/spans.js';

const pipe = fc.record({
  pressure: span<GaugePressure>(1e5, 2e7),
  outsideDiameter: span<Length>(0.05, 1.2),
  allowableStress: span<Stress>(8e7, 4e8),
  substrateModulus: span<Modulus>(65e9, 210e9),
  hoopModulus: span<Modulus>(8e9, 80e9),
  substratePressure: span<GaugePressure>(0, 1e7),
});

/** What the axial line works on: the plain wall, and a laminate that may lie on filler. */
const along = fc.record({ filler: span<Length>(1, 1.5), wall: span<Length>(0, 0.2) });

describe('the thickness when the pipe shares the load', () => {
  it('is zero while the pipe holds the pressure alone, and above zero past it', () => {
    fc.assert(
      fc.property(pipe, (given) => {
        const t = thicknessSharingHoop(given);
        expect(t > 0).toBe(given.pressure > given.substratePressure);
      }),
      seeded,
    );
  });

  it('gives back the pressure it was made for', () => {
    fc.assert(
      fc.property(pipe, (given) => {
        const t = thicknessSharingHoop(given);
        fc.pre(t > 0);
        near(pressureSharingHoop({ ...given, laminateThickness: t }), given.pressure, 1e-12);
      }),
      seeded,
    );
  });

  it('gives back the axial force it was made for', () => {
    fc.assert(
      fc.property(
        pipe,
        along,
        span<Force>(1e4, 1e7),
        span<Modulus>(4e9, 4e10),
        (given, cut, axialForce, axialModulus) => {
          const wrappedDiameter = (given.outsideDiameter * cut.filler) as Length;
          const remainingWall = (given.outsideDiameter * cut.wall) as Length;
          const t = thicknessSharingAxial({ ...given, wrappedDiameter, remainingWall, axialForce, axialModulus });
          fc.pre(t > 0);
          const laid = { ...given, wrappedDiameter, remainingWall, axialModulus, laminateThickness: t };
          near(forceSharingAxial(laid), axialForce, 1e-12);
        },
      ),
      seeded,
    );
  });

  it('never falls with more pressure or a smaller share of the pipe', () => {
    fc.assert(
      fc.property(pipe, rising<GaugePressure>(1e5, 2e7), rising<GaugePressure>(0, 1e7), (given, [p1, p2], [s1, s2]) => {
        expect(thicknessSharingHoop({ ...given, pressure: p2 })).toBeGreaterThanOrEqual(
          thicknessSharingHoop({ ...given, pressure: p1 }),
        );
        expect(thicknessSharingHoop({ ...given, substratePressure: s1 })).toBeGreaterThanOrEqual(
          thicknessSharingHoop({ ...given, substratePressure: s2 }),
        );
      }),
      seeded,
    );
  });

  it('goes to nothing as the laminate grows stiff', () => {
    fc.assert(
      fc.property(pipe, (given) => {
        expect(thicknessSharingHoop({ ...given, hoopModulus: 1e20 as Modulus })).toBeLessThan(1e-6);
      }),
      seeded,
    );
  });

  it('with closed ends needs less along the pipe than round it, when both moduli are the same', () => {
    fc.assert(
      fc.property(pipe, (drawn) => {
        const none = 0 as Moment;
        const held = Math.min(drawn.substratePressure, 0.9 * drawn.allowableStress) as GaugePressure;
        const given = { ...drawn, substratePressure: held };
        const remainingWall = wallOfSubstratePressure(given);
        const axialForce = equivalentAxialForce({
          ...given,
          axialForce: 0 as Force,
          shearForce: 0 as Force,
          bendingMoment: none,
          torque: none,
        });
        const wrappedDiameter = given.outsideDiameter;
        const cut = { ...given, wrappedDiameter, remainingWall, axialForce, axialModulus: given.hoopModulus };
        expect(thicknessSharingAxial(cut)).toBeLessThanOrEqual(thicknessSharingHoop(given));
      }),
      seeded,
    );
  });
});

const wrapped = fc
  .record({
    pressure: span<GaugePressure>(1e5, 2e7),
    outsideDiameter: span<Length>(0.05, 1.2),
    allowableStress: span<Stress>(8e7, 4e8),
    remainingWall: span<Length>(0.001, 0.02),
    substrateModulus: span<Modulus>(65e9, 210e9),
    hoopModulus: span<Modulus>(8e9, 80e9),
  })
  .filter(({ remainingWall, outsideDiameter }) => remainingWall < outsideDiameter / 4);

describe('the thickness when the pipe shares the load and was wrapped under pressure', () => {
  it('without live pressure is that of the plain form with the remaining wall counted', () => {
    fc.assert(
      fc.property(wrapped, (given) => {
        const live = thicknessSharingLive({ ...given, livePressure: 0 as GaugePressure });
        const plain = thicknessSharingHoop({ ...given, substratePressure: substratePressure(given) });
        expect(Math.abs(live - plain)).toBeLessThanOrEqual(1e-12 * (given.outsideDiameter + plain));
      }),
      seeded,
    );
  });

  it('grows with the live pressure, and with a thinner wall, and is never below the plain form', () => {
    fc.assert(
      fc.property(
        wrapped,
        rising<number & Length>(0, 0.95),
        rising<Length>(0.2, 1),
        (given, [low, high], [thin, thick]) => {
          const top = Math.min(
            given.pressure,
            substratePressure({ ...given, remainingWall: (given.remainingWall * thin) as Length }),
          );
          const at = (part: number, wall: number) =>
            thicknessSharingLive({
              ...given,
              remainingWall: (given.remainingWall * wall) as Length,
              livePressure: (top * part) as GaugePressure,
            });
          expect(at(high, thin)).toBeGreaterThanOrEqual(at(low, thin));
          expect(at(high, thin)).toBeGreaterThanOrEqual(at(high, thick));
          expect(at(low, 1)).toBeGreaterThanOrEqual(at(0, 1) * (1 - 1e-15));
        },
      ),
      seeded,
    );
  });

  it('gives back the pressure it was made for', () => {
    fc.assert(
      fc.property(wrapped, span<GaugePressure>(0, 0.9), (given, part) => {
        const livePressure = (part * Math.min(given.pressure, substratePressure(given))) as GaugePressure;
        const t = thicknessSharingLive({ ...given, livePressure });
        fc.pre(t > 0);
        near(pressureSharingLive({ ...given, livePressure, laminateThickness: t }), given.pressure, 1e-10);
      }),
      seeded,
    );
  });

  it('is refused as without solution when the live pressure alone takes the wall to its allowable stress', () => {
    const given = {
      pressure: 8e6 as GaugePressure,
      outsideDiameter: 0.3239 as Length,
      allowableStress: 160e6 as Stress,
      remainingWall: 0.005 as Length,
      substrateModulus: 207e9 as Modulus,
      hoopModulus: 49e9 as Modulus,
    };
    const holds = substratePressure(given);
    expect(() => thicknessSharingLive({ ...given, livePressure: (holds * 1.001) as GaugePressure })).toThrow(
      /^livePressure is 4944736\.0296\d* Pa; must be below 4939796\.2334\d* Pa/u,
    );
    expect(() => thicknessSharingLive({ ...given, livePressure: 8.1e6 as GaugePressure })).toThrow(
      'the design pressure',
    );
  });
});
