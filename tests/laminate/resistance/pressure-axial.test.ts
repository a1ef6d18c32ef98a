import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  equivalentAxialForce,
  pressureIgnoredAxial,
  pressureIgnoredAxialHasLimit,
  pressureOfEndForce,
  thicknessIgnoredAxial,
} from '../../../src/laminate/index.js';
import { type Force, force, gauge, length, type Moment, modulus, strain } from '../../../src/quantity/index.js';
import { span } from '../../properties/spans.js';

const seeded = { seed: 20261125, numRuns: 300 };
const closed = { shearForce: 0 as Force, bendingMoment: 0 as Moment, torque: 0 as Moment };

it('pressure held along the pipe is the inverse of the thickness that the closed end asks for', () => {
  fc.assert(
    fc.property(span(0.5, 10), span(60, 1000), span(10, 30), span(0, 0.25), span(0, 40), (P, D, Ea, nu, F) => {
      const outsideDiameter = length.mm(D);
      const common = {
        outsideDiameter,
        hoopModulus: modulus.GPa(24),
        axialModulus: modulus.GPa(Ea),
        poissonRatio: nu,
        allowableStrain: strain.percent(0.25),
      };
      fc.pre(pressureIgnoredAxialHasLimit(common));
      const externalForce = force.kN(F);
      const pressure = gauge.MPa(P);
      const axialForce = equivalentAxialForce({ pressure, outsideDiameter, axialForce: externalForce, ...closed });
      const laminateThickness = thicknessIgnoredAxial({ ...common, axialForce, pressure });
      const back = pressureIgnoredAxial({ ...common, laminateThickness, externalForce });
      expect(back / pressure).toBeCloseTo(1, 6);
    }),
    seeded,
  );
});

it('pressure of an end force is the inverse of the closed-end force', () => {
  fc.assert(
    fc.property(span(0.1, 20), span(60, 1200), span(0, 100), (P, D, F) => {
      const outsideDiameter = length.mm(D);
      const externalForce = force.kN(F);
      const axialForce = equivalentAxialForce({
        pressure: gauge.MPa(P),
        outsideDiameter,
        axialForce: externalForce,
        ...closed,
      });
      expect(pressureOfEndForce({ axialForce, outsideDiameter, externalForce })).toBeCloseTo(P * 1e6, 2);
    }),
    seeded,
  );
});

it('a force that takes all of the strain leaves no pressure', () => {
  const input = {
    laminateThickness: length.mm(1),
    outsideDiameter: length.mm(100),
    hoopModulus: modulus.GPa(24),
    axialModulus: modulus.GPa(12),
    poissonRatio: 0.1,
    allowableStrain: strain.percent(0.1),
    externalForce: force.kN(100),
  };
  expect(() => pressureIgnoredAxial(input)).toThrow(/at most .* N, which takes all of the axial strain/);
  expect(() => pressureIgnoredAxial({ ...input, poissonRatio: 0.99, axialModulus: modulus.GPa(30) })).toThrow(
    /no pressure reaches/,
  );
});

it('no pressure reaches the axial strain above half the ratio of the moduli, which the refusal names', () => {
  const common = {
    laminateThickness: length.mm(10),
    outsideDiameter: length.mm(200),
    hoopModulus: modulus.GPa(16),
    axialModulus: modulus.GPa(20),
    allowableStrain: strain.percent(0.25),
    externalForce: 0 as Force,
  };
  expect(() => pressureIgnoredAxial({ ...common, poissonRatio: 0.401 })).toThrow(
    expect.objectContaining({ code: 'no-solution', parameter: 'poissonRatio', limit: 0.4 }),
  );
  expect(pressureIgnoredAxial({ ...common, poissonRatio: 0.399 })).toBeGreaterThan(0);
});
