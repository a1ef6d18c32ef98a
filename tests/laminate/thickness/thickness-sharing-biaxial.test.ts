import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  pressureSharingBiaxial,
  thicknessSharingBiaxial,
  thicknessSharingHoop,
  wallOfSubstratePressure,
} from '../../../src/laminate/index.js';
import type { Force, GaugePressure, Length, Modulus, Strain, Stress } from '../../../src/quantity/index.js';
import { near, rising, seeded, span } from '../../properties/spans.js';

const pipe = fc
  .record({
    outsideDiameter: span<Length>(0.05, 1.2),
    filler: span<number & Length>(1, 1.3),
    allowableStress: span<Stress>(8e7, 4e8),
    held: span<number & Length>(0.01, 0.1),
    substrateModulus: span<Modulus>(65e9, 210e9),
    substratePoisson: span<number & Length>(0.2, 0.4),
    hoopModulus: span<Modulus>(15e9, 80e9),
    share: span<number & Length>(0.2, 1),
    poissonRatio: span<number & Length>(0, 0.4),
    hoopStrain: span<Strain>(1e-3, 4e-3),
    axialStrain: span<Strain>(1e-3, 4e-3),
  })
  .map(({ filler, held, share, ...given }) => {
    const substratePressure = (held * given.allowableStress) as GaugePressure;
    return {
      ...given,
      substratePressure,
      substrateWall: wallOfSubstratePressure({ ...given, substratePressure }),
      wrappedDiameter: (given.outsideDiameter * filler) as Length,
      axialModulus: (given.hoopModulus * share) as Modulus,
    };
  });

const closed = (pressure: number, outsideDiameter: number): number => (Math.PI / 4) * pressure * outsideDiameter ** 2;

describe('the thickness when a pipe with closed ends shares the load both ways', () => {
  it('gives back the pressure it was made for', () => {
    fc.assert(
      fc.property(
        pipe,
        span<GaugePressure>(0.5, 2),
        span<Force>(0, 0.3),
        span<Force>(-0.1, 0),
        (given, over, pull, push) => {
          const pressure = (over * given.substratePressure) as GaugePressure;
          const end = closed(pressure, given.outsideDiameter);
          const externalForce = (pull * end) as Force;
          const leastAxialForce = (push * end) as Force;
          const axialForce = (end + externalForce) as Force;
          const laminateThickness = thicknessSharingBiaxial({ ...given, pressure, axialForce, leastAxialForce });
          fc.pre(laminateThickness > 0);
          near(
            pressureSharingBiaxial({ ...given, laminateThickness, externalForce, leastAxialForce }),
            pressure,
            1e-10,
          );
        },
      ),
      seeded,
    );
  });

  it('is that of the one direction where neither layer feels the other', () => {
    fc.assert(
      fc.property(pipe, span<GaugePressure>(1, 2), (given, over) => {
        const pressure = (over * given.substratePressure) as GaugePressure;
        const alone = {
          ...given,
          wrappedDiameter: given.outsideDiameter,
          substratePoisson: 0,
          poissonRatio: 0,
          hoopStrain: 1 as Strain,
          axialStrain: 1 as Strain,
        };
        const none = 0 as Force;
        const both = thicknessSharingBiaxial({ ...alone, pressure, axialForce: none, leastAxialForce: none });
        const one = thicknessSharingHoop({ ...alone, pressure });
        expect(Math.abs(both - one)).toBeLessThanOrEqual(1e-10 * (one + given.substrateWall));
      }),
      seeded,
    );
  });

  it('never falls with a smaller allowable stress or strain', () => {
    fc.assert(
      fc.property(pipe, rising<Stress>(0.3, 1), rising<Strain>(0.3, 1), (given, [s1, s2], [e1, e2]) => {
        const pressure = (1.5 * given.substratePressure) as GaugePressure;
        const axialForce = closed(pressure, given.outsideDiameter) as Force;
        const at = (stress: number, strain: number): number =>
          thicknessSharingBiaxial({
            ...given,
            pressure,
            axialForce,
            leastAxialForce: 0 as Force,
            allowableStress: (given.allowableStress * stress) as Stress,
            hoopStrain: (given.hoopStrain * strain) as Strain,
            axialStrain: (given.axialStrain * strain) as Strain,
          });
        expect(at(s1, e1)).toBeGreaterThanOrEqual(at(s2, e2) * (1 - 1e-12));
      }),
      seeded,
    );
  });

  it('refuses a laminate whose ratios no body can have, and a pull that is called a push', () => {
    const given = {
      pressure: 5e6 as GaugePressure,
      axialForce: 1e5 as Force,
      leastAxialForce: 0 as Force,
      outsideDiameter: 0.2 as Length,
      wrappedDiameter: 0.2 as Length,
      allowableStress: 138e6 as Stress,
      substrateWall: 0.003 as Length,
      substrateModulus: 207e9 as Modulus,
      substratePoisson: 0.3,
      hoopModulus: 10e9 as Modulus,
      axialModulus: 40e9 as Modulus,
      poissonRatio: 0.4,
      hoopStrain: 0.0025 as Strain,
      axialStrain: 0.0025 as Strain,
    };
    expect(thicknessSharingBiaxial(given)).toBeGreaterThan(0);
    expect(() => thicknessSharingBiaxial({ ...given, poissonRatio: 0.5 })).toThrow('root of hoop over axial modulus');
    expect(() => thicknessSharingBiaxial({ ...given, leastAxialForce: 1 as Force })).toThrow('leastAxialForce');
    expect(() => thicknessSharingBiaxial({ ...given, wrappedDiameter: 0.19 as Length })).toThrow('wrappedDiameter');
    const laid = { ...given, laminateThickness: 0.004 as Length };
    expect(() => pressureSharingBiaxial({ ...laid, externalForce: 1e7 as Force })).toThrow('must leave something');
  });
});
