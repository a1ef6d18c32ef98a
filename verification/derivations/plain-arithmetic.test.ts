import { describe, expect, it } from 'vitest';
import { bondForce, ringPressureCeiling, ringResistance } from '../../src/laminate/index.js';
import {
  axialFailureStress,
  axialLossPressure,
  defectWidthAtEndOfLife,
  designFactorOfSafetyFactor,
  halfCircumference,
} from '../../src/pipe/index.js';
import {
  corrosionRate,
  energyReleaseRate,
  force,
  type Length,
  length,
  type Mass,
  modulus,
  moment,
  type Ratio,
  stress,
  time,
} from '../../src/quantity/index.js';
import { massWithoutWaste, massWithWaste } from '../../src/resin/index.js';

/** Small formulas by another road: added up strip by strip, as a limit, or as the sum that they undo. */

/** A circle as a polygon of many sides, which needs no pi. */
function around(diameter: number): number {
  const sides = 1e5;
  let [sum, x, y] = [0, diameter / 2, 0];
  for (let i = 1; i <= sides; i++) {
    // Points of the circle by the rational half-angle form, a quarter at a time.
    const u = (i % (sides / 4)) / (sides / 4);
    const [c, s] = [(1 - u * u) / (1 + u * u), (2 * u) / (1 + u * u)];
    const quarter = Math.floor(i / (sides / 4)) % 4;
    const [px, py] = [
      [c, s],
      [-s, c],
      [-c, -s],
      [s, -c],
    ][quarter] as [number, number];
    const [nx, ny] = [(px * diameter) / 2, (py * diameter) / 2];
    sum += Math.hypot(nx - x, ny - y);
    [x, y] = [nx, ny];
  }
  return sum;
}

describe('lengths round a pipe', () => {
  it('are those of a polygon of many sides', () => {
    const outsideDiameter = length.mm(168.3);
    const round = around(0.1683);
    expect(2 * halfCircumference({ outsideDiameter })).toBeCloseTo(round, 8);
    const far = { defectWidth: length.mm(500), rate: corrosionRate.mmPerYear(1), life: time.year(20), outsideDiameter };
    expect(defectWidthAtEndOfLife(far)).toBeCloseTo(round, 8);
  });

  it('of a growing loss are longer by both of its ends, year by year', () => {
    let width = 50;
    for (let year = 0; year < 10; year++) width += 0.3 + 0.3;
    const grown = defectWidthAtEndOfLife({
      defectWidth: length.mm(50),
      rate: corrosionRate.mmPerYear(0.3),
      life: time.year(10),
      outsideDiameter: length.mm(168.3),
    });
    expect(length.inMm(grown)).toBeCloseTo(width, 9);
  });
});

describe('the force that a bond passes on', () => {
  it('is a third of the shear strength on the bonded ring', () => {
    const found = bondForce({
      outsideDiameter: length.mm(168.3),
      overlap: length.mm(100),
      lapShearStrength: stress.MPa(6),
    });
    expect(found / ((around(0.1683) * 0.1 * 6e6) / 3)).toBeCloseTo(1, 8);
  });
});

describe('the ceiling of an unbonded ring', () => {
  const ring = {
    unbondedLength: length.mm(80),
    hoopModulus: modulus.GPa(24),
    energyReleaseRate: energyReleaseRate.JPerM2(180),
    serviceFactor: 0.5,
  };

  it('is what the ring holds when its laminate is as thick as a house', () => {
    const held = ringResistance({ ...ring, laminateThickness: 1e9 as Length, outsideDiameter: length.mm(168.3) });
    expect(held / ringPressureCeiling(ring)).toBeCloseTo(1, 8);
  });

  it('releases half of the energy of a crack of that length', () => {
    // A crack of length W in a plate: G = p^2 pi W/(2 E); a rigid block on one side leaves half of it.
    const p = ringPressureCeiling(ring) / 0.5;
    expect((p * p * around(0.08)) / (2 * 24e9) / 2).toBeCloseTo(180, 4);
  });
});

describe('the pressure that a loss carries along the pipe', () => {
  const pipe = { outsideDiameter: length.mm(300), wallThickness: length.mm(10) };
  const at = { failureStress: stress.MPa(200), safetyFactor: 2, ...pipe };

  it('balances the end load, the tension and the bending on a thin ring', () => {
    const [axialForce, bendingMoment] = [force.kN(300), moment.kNm(20)];
    const P = axialLossPressure({ ...at, axialForce, bendingMoment });
    // By strips round the ring: its section, and its section modulus from the lever of each strip.
    const strips = 20_000;
    const wide = around(0.3) / strips;
    let [section, inertia] = [0, 0];
    for (let i = 0; i < strips; i++) {
      const lever = 0.15 * Math.sin((2 * Math.PI * i) / strips);
      section += wide * 0.01;
      inertia += wide * 0.01 * lever * lever;
    }
    const end = (P * around(0.3) * 0.3) / 4;
    const most = (end + 2 * 0 + 300e3 * 1) / section + (20e3 * 0.15) / inertia;
    expect(most / (200e6 / 2)).toBeCloseTo(1, 6);
  });

  it('is that of the end load alone where nothing else pulls', () => {
    const P = axialLossPressure(at);
    expect((P * 0.3) / (4 * 0.01)).toBeCloseTo(100e6, 0);
  });

  it('of a sound wall is its flow stress, over any width', () => {
    const sound = { ...pipe, defectDepth: 0 as Length, flowStress: stress.MPa(300) };
    for (const share of [0.1, 0.5, 1]) {
      const { failureStress, halfAngle } = axialFailureStress({
        ...sound,
        defectWidth: (around(0.3) * share) as Length,
      });
      expect(failureStress).toBeCloseTo(300e6, 3);
      // Nothing is least in a sound wall; its search ends where the form without a loss turns, at 120 degrees.
      expect(halfAngle / Math.min(share * Math.PI, (2 * Math.PI) / 3)).toBeCloseTo(1, 6);
    }
  });
});

describe('factors that undo one another', () => {
  it('are a safety factor and the design factor of it', () => {
    expect(1.39 * designFactorOfSafetyFactor({ safetyFactor: 1.39 })).toBeCloseTo(1, 14);
  });

  it('are a mass with its waste and without', () => {
    const wasted = massWithWaste({ volume: 0.002 as never, density: 1150 as never, waste: 0.15 as Ratio });
    const kept = massWithoutWaste({ mass: wasted as Mass, waste: 0.15 as Ratio });
    expect(kept).toBeCloseTo(2.3, 12);
  });
});
