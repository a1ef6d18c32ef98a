import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  designHoleDiameter,
  holeAtEndOfLife,
  holePressureCeiling,
  holeResistance,
  holeResistanceBeyondRigidRoot,
  largestHole,
  leakServiceFactor,
  leakSeverity,
  leakTemperatureFactor,
  ringPressureCeiling,
  ringResistance,
  thicknessForHoleSize,
  thicknessHole,
  thicknessRing,
} from '../../../src/laminate/index.js';
import {
  type CorrosionRate,
  corrosionRate,
  type EnergyReleaseRate,
  type GaugePressure,
  gauge,
  type Length,
  length,
  type Modulus,
  time,
} from '../../../src/quantity/index.js';
import { near, rising, seeded, span } from '../../properties/spans.js';

const bond = fc.record({
  holeDiameter: span<Length>(0.015, 0.1),
  hoopModulus: span<Modulus>(8e9, 80e9),
  axialModulus: span<Modulus>(4e9, 40e9),
  poissonRatio: span(0, 0.3),
  shearModulus: span<Modulus>(1e9, 6e9),
  energyReleaseRate: span<EnergyReleaseRate>(50, 500),
  serviceFactor: span(0.1, 1),
});

describe('the laminate over a hole', () => {
  it('gives back the thickness it was asked to hold with, and the pressure that a thickness holds', () => {
    fc.assert(
      fc.property(bond, span<Length>(0.001, 0.1), (given, laminateThickness) => {
        const pressure = holeResistance({ ...given, laminateThickness });
        // Near the ceiling the pressure hardly changes with thickness, so the way back magnifies the rounding.
        const room = 1 - (pressure / holePressureCeiling(given)) ** 2;
        near(thicknessHole({ ...given, pressure }), laminateThickness, 1e-14 / room);
        near(holeResistance({ ...given, laminateThickness: thicknessHole({ ...given, pressure }) }), pressure, 1e-13);
      }),
      seeded,
    );
  });

  it('stays below the ceiling, and comes to it as the laminate grows thick', () => {
    fc.assert(
      fc.property(bond, span<Length>(0.001, 0.1), (given, laminateThickness) => {
        const ceiling = holePressureCeiling(given);
        expect(holeResistance({ ...given, laminateThickness })).toBeLessThan(ceiling);
        near(holeResistance({ ...given, laminateThickness: 1e9 as Length }), ceiling, 1e-6);
      }),
      seeded,
    );
  });

  it('holds more when it is thicker, and less over a wider hole, and needs more thickness for more pressure', () => {
    fc.assert(
      fc.property(
        bond,
        rising<Length>(0.001, 0.1),
        rising<Length>(0.01, 0.2),
        rising(0.01, 0.99),
        (given, [thin, thick], [small, wide], [low, high]) => {
          const held = (laminateThickness: Length, holeDiameter: Length) =>
            holeResistance({ ...given, laminateThickness, holeDiameter });
          expect(held(thick, small)).toBeGreaterThanOrEqual(held(thin, small));
          expect(held(thin, small)).toBeGreaterThanOrEqual(held(thin, wide));
          const needed = (part: number) =>
            thicknessHole({ ...given, pressure: (part * holePressureCeiling(given)) as GaugePressure });
          expect(needed(high)).toBeGreaterThanOrEqual(needed(low));
        },
      ),
      seeded,
    );
  });

  it('acts as a clamped plate when it is thin', () => {
    // gamma = p^2 3 (1 - nu^2) a^4/(32 E t^3) in the limit.
    const given = {
      holeDiameter: 0.1 as Length,
      hoopModulus: 2e10 as Modulus,
      axialModulus: 2e10 as Modulus,
      poissonRatio: 0.3,
      shearModulus: 7e9 as Modulus,
      energyReleaseRate: 200 as EnergyReleaseRate,
      serviceFactor: 1,
    };
    const t = 1e-6;
    const plate = Math.sqrt((200 * 32 * 2e10 * t ** 3) / (3 * 0.91 * 0.05 ** 4));
    near(holeResistance({ ...given, laminateThickness: t as Length }), plate, 1e-6);
    expect(holeResistanceBeyondRigidRoot({ holeDiameter: length.mm(25), laminateThickness: length.mm(8) })).toBe(true);
    expect(holeResistanceBeyondRigidRoot({ holeDiameter: length.mm(24), laminateThickness: length.mm(8) })).toBe(false);
  });

  it('refuses a ratio of Poisson that no laminate with these moduli can have', () => {
    expect(() =>
      holePressureCeiling({
        holeDiameter: length.mm(20),
        hoopModulus: 8e9 as Modulus,
        axialModulus: 40e9 as Modulus,
        poissonRatio: 0.45,
        energyReleaseRate: 200 as EnergyReleaseRate,
        serviceFactor: 1,
      }),
    ).toThrow('poissonRatio is 0.45; must be below 0.447');
  });
});

describe('the hole of the design', () => {
  it('is never below 15 mm unless another least diameter is asked for by name', () => {
    fc.assert(
      fc.property(span<Length>(1e-5, 0.1), (holeDiameter) => {
        const d = designHoleDiameter({ holeDiameter });
        expect(d).toBeGreaterThanOrEqual(length.mm(15));
        expect(d).toBeGreaterThanOrEqual(holeDiameter);
        expect([length.mm(15), holeDiameter]).toContain(d);
        expect(designHoleDiameter({ holeDiameter, leastDiameter: length.mm(0) })).toBe(holeDiameter);
      }),
      seeded,
    );
  });

  it('grows on both sides over the life', () => {
    near(
      holeAtEndOfLife({
        holeDiameter: length.mm(6),
        corrosionRate: corrosionRate.mmPerYear(0.25),
        designLife: time.year(10),
      }),
      length.mm(11),
      1e-14,
    );
    expect(() =>
      holeAtEndOfLife({ holeDiameter: length.mm(6), corrosionRate: -1 as CorrosionRate, designLife: time.year(10) }),
    ).toThrow('corrosionRate');
  });

  it('has its largest diameter where a shell stops being a plate, and a severity that falls with the root of its size', () => {
    near(largestHole({ outsideDiameter: length.mm(100), thickness: length.mm(6) }), length.mm(60), 1e-14);
    const pressure = gauge.MPa(1);
    near(
      leakSeverity({ pressure, holeDiameter: length.mm(40) }) / leakSeverity({ pressure, holeDiameter: length.mm(10) }),
      2,
      1e-15,
    );
  });
});

describe('the service factor of a leak', () => {
  const classes = [
    [0.83, 0.02088],
    [0.75, 0.01856],
    [0.666, 0.01584],
  ] as const;

  it.each(classes)('starting at %s and falling by %s a year meets 0.333 after 20 years', (firstYear, decay) => {
    expect(leakServiceFactor({ designLife: time.year(20), firstYear, decay })).toBeCloseTo(0.333, 3);
  });

  it('never rises with life, is flat within the first year, and ends at 20 years', () => {
    fc.assert(
      fc.property(rising(0.01, 20), fc.constantFrom(...classes), ([short, long], [firstYear, decay]) => {
        const at = (years: number) => leakServiceFactor({ designLife: time.year(years), firstYear, decay });
        expect(at(long)).toBeLessThanOrEqual(at(short));
        expect(at(short)).toBeLessThanOrEqual(firstYear);
      }),
      seeded,
    );
    expect(() => leakServiceFactor({ designLife: time.year(20.01), firstYear: 0.83, decay: 0.02088 })).toThrow(
      'at most 631152000 s',
    );
    expect(leakServiceFactor({ designLife: time.year(20), firstYear: 0.333, decay: 0 })).toBe(0.333);
  });
});

describe('the temperature factor of a leak', () => {
  it('is the pressure ratio of the hole equation when all moduli fall alike, and never above 1', () => {
    fc.assert(
      fc.property(bond, span(0.2, 1.2), span(0.2, 1.2), (given, soft, weak) => {
        const factor = leakTemperatureFactor({
          energyAtDesignTemperature: (given.energyReleaseRate * weak) as EnergyReleaseRate,
          energyAtTestTemperature: given.energyReleaseRate,
          modulusAtDesignTemperature: (given.hoopModulus * soft) as Modulus,
          modulusAtTestTemperature: given.hoopModulus,
        });
        const hot = {
          ...given,
          hoopModulus: (given.hoopModulus * soft) as Modulus,
          axialModulus: (given.axialModulus * soft) as Modulus,
          shearModulus: (given.shearModulus * soft) as Modulus,
          energyReleaseRate: (given.energyReleaseRate * weak) as EnergyReleaseRate,
        };
        const ratio =
          holeResistance({ ...hot, laminateThickness: length.mm(8) }) /
          holeResistance({ ...given, laminateThickness: length.mm(8) });
        near(factor, Math.min(1, ratio), 1e-12);
      }),
      seeded,
    );
  });
});

describe('the laminate over a seal, as a ring that is bonded nowhere', () => {
  const ring = fc.record({
    outsideDiameter: span<Length>(0.0213, 1.2),
    unbondedLength: span<Length>(0.015, 0.4),
    hoopModulus: span<Modulus>(8e9, 80e9),
    energyReleaseRate: span<EnergyReleaseRate>(50, 500),
    serviceFactor: span(0.1, 1),
  });

  it('gives back the thickness it was asked to hold with, below its ceiling', () => {
    fc.assert(
      fc.property(ring, span(0.05, 0.95), (input, share) => {
        const pressure = (ringPressureCeiling(input) * share) as GaugePressure;
        const laminateThickness = thicknessRing({ ...input, pressure });
        near(ringResistance({ ...input, laminateThickness }), pressure);
      }),
      seeded,
    );
  });

  it('refuses what no thickness holds', () => {
    fc.assert(
      fc.property(ring, (input) => {
        const pressure = (ringPressureCeiling(input) * 1.001) as GaugePressure;
        expect(() => thicknessRing({ ...input, pressure })).toThrow(/no thickness holds more/u);
      }),
      seeded,
    );
  });
});

describe('the hole that the equations of a round one hold for', () => {
  it('needs the thickness that makes it the largest one', () => {
    fc.assert(
      fc.property(span<Length>(0.015, 0.1), span<Length>(0.0213, 1.2), (holeDiameter, outsideDiameter) => {
        const thickness = thicknessForHoleSize({ holeDiameter, outsideDiameter });
        near(largestHole({ outsideDiameter, thickness }), holeDiameter);
      }),
      seeded,
    );
  });
});
