import { describe, expect, it } from 'vitest';
import { ringBuckling, stripBendingMoment, stripBendingStrain } from '../../src/mechanics/index.js';
import {
  type AbsolutePressure,
  type Angle,
  type Area,
  absolute,
  angle,
  density,
  type Force,
  force,
  type GaugePressure,
  gauge,
  type Length,
  length,
  modulus,
  molarMass,
  type Stress,
  stress,
  temperature,
} from '../../src/quantity/index.js';
import {
  backingPlateDeflection,
  backingPlateStress,
  bandLength,
  bandsOverPad,
  bandTension,
  circleArea,
  clampingForce,
  contactPressure,
  criticalPressureRatio,
  fastenerTension,
  gasLeakRate,
  jetReaction,
  jetSpeed,
  leakForce,
  liquidLeakRate,
  meanBandTension,
  pipeUnderBand,
  sheetOverhangPressure,
  tensionAlongBand,
} from '../../src/seal/index.js';
import {
  bandCircles,
  bandsCountedInStrips,
  discForceSummed,
  gasFlowSearched,
  ovalPipeAtYield,
  overhangMomentSummed,
  padForceSummed,
  plateMarched,
  ringBucklingByEnergy,
  stripMomentSummed,
  tensionMarched,
} from './seal.js';

/** Relative difference of what the library says and what the other route says. */
const off = (found: number, other: number): number => Math.abs(found - other) / Math.abs(other);

describe('a sheet beyond its bands', () => {
  it('carries what the moments of its slices leave of its strength', () => {
    for (const [a, t, S, f] of [
      [7e-3, 0.4e-3, 205e6, 2],
      [20e-3, 1.5e-3, 350e6, 1.5],
    ] as const) {
      const pressure = sheetOverhangPressure({
        overhang: a as Length,
        thickness: t as Length,
        strength: S as Stress,
        factor: f,
      });
      // Of a strip one metre wide.
      const moment = overhangMomentSummed(pressure, a);
      expect(off((moment * (t / 2)) / (t ** 3 / 12), S / f)).toBeLessThan(1e-6);
    }
  });
});

describe('bands across a pad', () => {
  it('press on it as counted in strips', () => {
    for (const [bands, width, pad] of [
      [1, 20, 54],
      [2, 20, 54],
      [3, 20, 54],
      [20, 20, 54],
      [1, 80, 54],
    ] as const) {
      const found = bandsOverPad({ bands, bandWidth: length.mm(width), padDiameter: length.mm(pad) });
      expect(off(found, bandsCountedInStrips(bands, width / 1000, pad / 1000))).toBeLessThan(1e-4);
    }
  });
});

describe('a band round a pipe', () => {
  it('loses its tension to friction as small steps of the arc do', () => {
    for (const friction of [0.05, 0.2, 0.5]) {
      for (const arc of [0.5, Math.PI, 6]) {
        const { end } = tensionMarched(5000, friction, arc);
        expect(
          off(tensionAlongBand({ fastenerTension: force.N(5000), friction, angle: arc as Angle }), end),
        ).toBeLessThan(1e-12);
        expect(off(fastenerTension({ padTension: end as Force, friction, angle: arc as Angle }), 5000)).toBeLessThan(
          1e-12,
        );
      }
      const { mean } = tensionMarched(5000, friction, Math.PI);
      expect(off(meanBandTension({ fastenerTension: force.N(5000), friction }), mean)).toBeLessThan(1e-12);
    }
  });

  it('presses a pad on as its contact pressure, summed over the arc, does', () => {
    for (const arc of [5, 20, 60, 90]) {
      const summed = padForceSummed(5000, angle.deg(arc), 0.1683, 0.02);
      expect(off(clampingForce({ tension: force.N(5000), halfAngle: angle.deg(arc) }), summed)).toBeLessThan(1e-8);
      expect(
        off(bandTension({ force: summed as Force, halfAngle: angle.deg(arc), factor: 1.5, bands: 3 }), 2500),
      ).toBeLessThan(1e-8);
    }
  });

  it('has the contact pressure that balances both halves of the ring', () => {
    // Half a ring: the pressure over its projected width against the tension at both cuts.
    const q = contactPressure({ tension: force.N(5000), diameter: length.mm(168.3), bandWidth: length.mm(20) });
    expect(off(padForceSummed(5000, Math.PI / 2, 0.1683, 0.02), q * 0.1683 * 0.02)).toBeLessThan(1e-8);
    expect(off(q * 0.1683 * 0.02, 2 * 5000)).toBeLessThan(1e-12);
  });

  it('is as long as its circles', () => {
    for (const turns of [1, 2, 3]) {
      const loopLength = bandLength({
        circumference: length.mm(530),
        buildUp: length.mm(6),
        bandThickness: length.mm(0.8),
        overlap: length.mm(60),
        turns,
      });
      expect(off(loopLength, bandCircles(0.53, 0.006, 0.0008, turns) + 0.06)).toBeLessThan(1e-13);
    }
  });
});

describe('the force of a leak', () => {
  it('is the pressure summed over rings of hole and pad', () => {
    const { onPad, onHole } = leakForce({
      pressure: gauge.MPa(10),
      holeArea: circleArea({ diameter: length.mm(10) }),
      padArea: circleArea({ diameter: length.mm(30) }),
    });
    expect(off(onHole, discForceSummed(10e6, 0.01))).toBeLessThan(1e-12);
    expect(off(onPad, discForceSummed(10e6, 0.03))).toBeLessThan(1e-12);
  });
});

describe('a plate over a hole', () => {
  it.each(['clamped', 'simply supported'] as const)(
    '%s, bends as the plate equation, marched outward, says',
    (support) => {
      for (const [poissonRatio, thickness] of [
        [0.3, 1],
        [0.2, 0.4],
      ] as const) {
        const other = plateMarched(1e6, 0.01, thickness / 1000, 200e9, poissonRatio, support === 'clamped');
        const plate = {
          pressure: gauge.MPa(1),
          holeDiameter: length.mm(20),
          thickness: length.mm(thickness),
          support,
          poissonRatio,
        };
        expect(off(backingPlateStress(plate), other.stress)).toBeLessThan(1e-6);
        expect(off(backingPlateDeflection({ ...plate, modulus: modulus.GPa(200) }), other.deflection)).toBeLessThan(
          1e-6,
        );
      }
    },
  );
});

describe('a strip bent on a pipe', () => {
  it('has the strain of its outer arc and the moment of its summed stress', () => {
    const [R, t] = [0.08415, 0.001];
    const stretch = ((R + t) * 1.3 - (R + t / 2) * 1.3) / ((R + t / 2) * 1.3);
    expect(off(stripBendingStrain({ thickness: length.mm(1), radius: length.mm(84.15) }), stretch)).toBeLessThan(1e-12);
    const moment = stripBendingMoment({
      modulus: modulus.GPa(200),
      width: length.mm(50),
      thickness: length.mm(1),
      radius: length.mm(84.15),
      poissonRatio: 0,
    });
    expect(off(moment, stripMomentSummed(200e9, 0.05, t, R))).toBeLessThan(1e-6);
  });
});

describe('the pipe under the band', () => {
  const steel = { modulus: modulus.GPa(207), poissonRatio: 0.3 };

  it('buckles at the least energy of a ring over its lobes', () => {
    for (const t of [1, 3, 7.11]) {
      const found = ringBuckling({ ...steel, outsideDiameter: length.mm(168.3), wallThickness: length.mm(t) });
      expect(off(found, ringBucklingByEnergy(0.1683, t / 1000, 207e9, 0.3))).toBeLessThan(1e-12);
    }
  });

  it('is held at or below the first yield of a pipe a quarter of a per cent out of round, and within 8 per cent of one that is one per cent out', () => {
    const share = (t: number, yieldStrength: number, outOfRound: number): number =>
      pipeUnderBand({
        ...steel,
        outsideDiameter: length.mm(168.3),
        wallThickness: length.mm(t),
        yieldStrength: stress.MPa(yieldStrength),
        factor: 1,
      }).pressure / ovalPipeAtYield(0.1683, t / 1000, 207e9, 0.3, yieldStrength * 1e6, outOfRound);
    for (const t of [0.8, 1, 1.5, 2, 3, 4, 5.6, 8.4, 16]) {
      for (const yieldStrength of [170, 241, 360, 450]) {
        expect(share(t, yieldStrength, 0.0025)).toBeLessThanOrEqual(1);
        expect(share(t, yieldStrength, 0.01)).toBeLessThan(1.08);
      }
    }
    // One per cent out of round does exceed it somewhere: the factor is not for show.
    expect(share(1.5, 170, 0.01)).toBeGreaterThan(1.05);
  });
});

describe('a leaking gas', () => {
  const gas = { temperature: temperature.kelvin(288), molarMass: molarMass.gPerMol(28.96), holeArea: 1e-4 as Area };
  const flow = (p1: number, k: number) =>
    gasLeakRate({
      ...gas,
      insidePressure: p1 as AbsolutePressure,
      outsidePressure: absolute.kPa(101.325),
      heatCapacityRatio: k,
    });

  it('flows as the greatest isentropic flow over the pressure in the hole, choked and unchoked', () => {
    for (const k of [1.05, 1.3, 1.4, 1.667]) {
      for (const p1 of [102e3, 110e3, 150e3, 185e3, 220e3, 1.1e6, 1e7]) {
        const { massFlow } = flow(p1, k);
        expect(off(massFlow, 1e-4 * gasFlowSearched(p1, 101325, 288, 0.02896, k).flux)).toBeLessThan(1e-9);
      }
    }
  });

  it('chokes at the pressure in the hole of that greatest flow', () => {
    for (const k of [1.05, 1.3, 1.4, 1.667]) {
      const { pressure } = gasFlowSearched(1e6, 1, 288, 0.02896, k);
      expect(off(criticalPressureRatio({ heatCapacityRatio: k }), pressure / 1e6)).toBeLessThan(1e-6);
    }
  });

  it('pushes with less than the reaction of a smooth liquid jet at the same pressure', () => {
    for (const k of [1.05, 1.3, 1.4, 1.667]) {
      for (const p1 of [102e3, 150e3, 250e3, 1e6, 1e7]) {
        const { thrust } = gasFlowSearched(p1, 101325, 288, 0.02896, k);
        const liquid = jetReaction({ pressureDifference: (p1 - 101325) as GaugePressure, holeArea: 1e-4 as Area });
        expect(1e-4 * thrust).toBeLessThan(liquid);
      }
    }
  });
});

describe('a leaking liquid', () => {
  const leak = { pressureDifference: gauge.MPa(1), density: density.kgPerM3(1000) };
  const holeArea = circleArea({ diameter: length.mm(10) });

  it('has the kinetic energy that its pressure held', () => {
    const v = jetSpeed(leak);
    expect(off((1000 * v * v) / 2, 1e6)).toBeLessThan(1e-13);
  });

  it('pushes back with its density times its flow times its speed', () => {
    const [dischargeCoefficient, velocityCoefficient] = [0.61, 0.98];
    const flow = liquidLeakRate({ ...leak, holeArea, dischargeCoefficient });
    const reaction = jetReaction({ ...leak, holeArea, dischargeCoefficient, velocityCoefficient });
    expect(off(reaction, 1000 * flow * velocityCoefficient * jetSpeed(leak))).toBeLessThan(1e-13);
  });
});
