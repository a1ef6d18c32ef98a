import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  equivalentAxialForce,
  farthestTemperature,
  holeOverDiameter,
  meanModulus,
  overlapFromHole,
  overlapFromHoleBeyondShare,
  performanceUnderCycles,
  plateModulus,
  pressureRatio,
  relievingForce,
  thicknessIgnoredHoop,
  wrappedDiameter,
} from '../../../src/laminate/index.js';
import {
  type Force,
  force,
  gauge,
  length,
  type Moment,
  modulus,
  strain,
  type Temperature,
  temperature,
} from '../../../src/quantity/index.js';

const runs = { seed: 20261125, numRuns: 300 } as const;
const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('the diameter that the laminate goes round', () => {
  it('is that of the pipe and twice the filler', () => {
    expect(
      length.inMm(wrappedDiameter({ outsideDiameter: length.mm(323.9), fillerThickness: length.mm(4) })),
    ).toBeCloseTo(331.9, 9);
    expect(wrappedDiameter({ outsideDiameter: length.mm(323.9), fillerThickness: length.mm(0) })).toBe(
      length.mm(323.9),
    );
  });
});

describe('the axial force in the hoop line', () => {
  const pipe = { pressure: gauge.MPa(4), outsideDiameter: length.mm(323.9) };

  it('is a push as it is, and never a pull unless the end load is counted', () => {
    expect(relievingForce({ ...pipe, axialForce: force.kN(-200) })).toBe(force.kN(-200));
    expect(relievingForce({ ...pipe, axialForce: force.kN(200) })).toBe(0);
    const endLoad = (Math.PI / 4) * 4 * 323.9 ** 2 * 1e-3;
    const counted = { ...pipe, endLoad: 'counted' } as const;
    expect(force.inKN(relievingForce({ ...counted, axialForce: force.kN(0) }))).toBeCloseTo(endLoad, 9);
    expect(force.inKN(relievingForce({ ...counted, axialForce: force.kN(-200) }))).toBeCloseTo(endLoad - 200, 9);
    expect(force.inKN(relievingForce({ ...counted, axialForce: force.kN(200) }))).toBeCloseTo(endLoad, 9);
  });

  it('left out never thins the laminate', () => {
    fc.assert(
      fc.property(real(0, 20e6), real(0.05, 1.2), real(-1e6, 1e6), (P, D, F) => {
        const loads = { pressure: gauge.MPa(P / 1e6), outsideDiameter: length.m(D), axialForce: F as Force };
        const thickness = (axialForce: Force): number =>
          thicknessIgnoredHoop({
            pressure: loads.pressure,
            outsideDiameter: loads.outsideDiameter,
            hoopModulus: modulus.GPa(24),
            poissonRatio: 0.2,
            allowableStrain: strain.percent(0.25),
            axialForce,
          });
        const without = thickness(relievingForce(loads));
        expect(without).toBeGreaterThanOrEqual(thickness(relievingForce({ ...loads, endLoad: 'counted' })));
        expect(without).toBeGreaterThanOrEqual(thickness(0 as Force));
      }),
      runs,
    );
  });

  it('is refused for a word that it does not know', () => {
    expect(() => relievingForce({ ...pipe, axialForce: force.kN(0), endLoad: 'half' as never })).toThrow(/endLoad/u);
  });
});

describe('the force along a line without pressure', () => {
  it('is the size of the stated force, to the bit, whichever way it acts', () => {
    fc.assert(
      fc.property(real(-1e6, 1e6), real(0.02, 1.2), (F, D) => {
        const force = equivalentAxialForce({
          pressure: gauge.MPa(0),
          outsideDiameter: length.m(D),
          axialForce: F as Force,
          shearForce: 0 as Force,
          bendingMoment: 0 as Moment,
          torque: 0 as Moment,
        });
        fc.pre(F === 0 || Math.abs(F) > 1e-100);
        expect(force).toBe(Math.abs(F));
      }),
      runs,
    );
  });
});

describe('the service temperature farthest from that of the installation', () => {
  it('is one of the two, and none is farther', () => {
    const anyTemperature = real(230, 380).map((T) => T as Temperature);
    fc.assert(
      fc.property(anyTemperature, anyTemperature, anyTemperature, (Ti, Td, Tl) => {
        const far = farthestTemperature({
          installationTemperature: Ti,
          designTemperature: Td,
          lowestTemperature: Tl,
        });
        expect([Td, Tl]).toContain(far);
        expect(Math.abs(far - Ti)).toBe(Math.max(Math.abs(Td - Ti), Math.abs(Tl - Ti)));
      }),
      runs,
    );
    const cold = {
      installationTemperature: temperature.degC(20),
      designTemperature: temperature.degC(30),
      lowestTemperature: temperature.degC(-20),
    };
    expect(farthestTemperature(cold)).toBe(temperature.degC(-20));
  });
});

describe('ratios of a case', () => {
  it('are the lowest over the highest pressure of a cycle, and the hole over the pipe', () => {
    expect(pressureRatio({ lowestPressure: gauge.bar(5), highestPressure: gauge.bar(20) })).toBeCloseTo(0.25, 15);
    expect(() => pressureRatio({ lowestPressure: gauge.bar(21), highestPressure: gauge.bar(20) })).toThrow(/highest/u);
    expect(() => pressureRatio({ lowestPressure: gauge.bar(0), highestPressure: gauge.bar(0) })).toThrow(/above 0/u);
    expect(holeOverDiameter({ holeDiameter: length.mm(50), outsideDiameter: length.mm(200) })).toBeCloseTo(0.25, 15);
  });

  it('lower the factor on the long-term strength by cycles, and leave it without them', () => {
    expect(performanceUnderCycles({ performanceFactor: 0.5, cyclicFactor: 0.5 })).toBe(0.25);
    expect(performanceUnderCycles({ performanceFactor: 0.5, cyclicFactor: 1 })).toBe(0.5);
    expect(() => performanceUnderCycles({ performanceFactor: 1.1, cyclicFactor: 1 })).toThrow(/at most 1/u);
  });
});

describe('the mean modulus', () => {
  it('lies between the two, and is the plate modulus without contraction across', () => {
    fc.assert(
      fc.property(real(4e9, 80e9), real(4e9, 80e9), (Ec, Ea) => {
        const moduli = { hoopModulus: modulus.GPa(Ec / 1e9), axialModulus: modulus.GPa(Ea / 1e9) };
        const mean = meanModulus(moduli);
        expect(mean).toBeGreaterThanOrEqual(Math.min(Ec, Ea) * (1 - 1e-12));
        expect(mean).toBeLessThanOrEqual(Math.max(Ec, Ea) * (1 + 1e-12));
        expect(mean).toBe(plateModulus({ ...moduli, poissonRatio: 0 }));
      }),
      runs,
    );
  });
});

describe('the overlap round a hole', () => {
  it('is refused exactly where the hole is said to be beyond it', () => {
    fc.assert(
      fc.property(real(0.001, 0.1), real(0.05, 1.2), real(0.003, 0.02), (d, D, t) => {
        const hole = { holeDiameter: length.m(d), outsideDiameter: length.m(D), wallThickness: length.m(t) };
        if (overlapFromHoleBeyondShare(hole)) expect(() => overlapFromHole(hole)).toThrow(/larger hole/u);
        else expect(overlapFromHole(hole)).toBe(4 * hole.holeDiameter);
      }),
      runs,
    );
  });
});
