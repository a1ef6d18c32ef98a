import { describe, expect, it } from 'vitest';
import { barcolShopMean, blockedLinePressure, waterCompressionFactor } from '../../src/acceptance/index.js';
import { equivalentTimeRamp, equivalentTimeSwing, nthOrderConversion } from '../../src/cure/index.js';
import { leakTemperatureFactor, pressureIgnoredAxialHasLimit } from '../../src/laminate/index.js';
import { boundsOf } from '../../src/laminate/shared-biaxial.js';
import { assessLocalMetalLossProfile } from '../../src/pipe/api579/assess-api579.js';
import { mawpAll, remainingStrength } from '../../src/pipe/index.js';
import { backingSheet, pipeUnderBand } from '../../src/seal/index.js';

/** More of the same: where a form ends inside a formula, seen from both sides. */

// biome-ignore lint/suspicious/noExplicitAny: plain SI numbers stand for quantities of many kinds.
const si = (input: object): any => input;

describe('a cure over a ramp', () => {
  const ramp = (startTemperature: number, endTemperature: number) =>
    equivalentTimeRamp(
      si({
        ...{
          startTemperature,
          endTemperature,
          duration: 10_000,
          minimumTemperature: 283.15,
          mechanism: 'two-part reaction',
        },
        ...{ referenceTemperature: 296.15, activationEnergy: 50_000, testedFrom: 270, testedTo: 320 },
      }),
    );

  it('that stays too cold counts nothing, all of it', () => {
    expect(ramp(275, 280)).toEqual({ equivalentTime: 0, creditedTime: 0, uncreditedTime: 10_000 });
  });

  it('that is warm enough for its last half per mille counts that', () => {
    const { equivalentTime, creditedTime } = ramp(273.15, 273.15 + 10 / 0.9995);
    expect(creditedTime).toBeCloseTo(5, 6);
    expect(equivalentTime).toBeGreaterThan(0);
  });
});

describe('a cure over the swing of a day', () => {
  const swing = (sinceColdest: number, minimumTemperature: number, duration = 86_400) =>
    equivalentTimeSwing(
      si({
        ...{ meanTemperature: 290, swing: 20, sinceColdest, duration, minimumTemperature },
        ...{ mechanism: 'two-part reaction', referenceTemperature: 296.15, activationEnergy: 50_000 },
        ...{ testedFrom: 270, testedTo: 320 },
      }),
    );

  it('credits the hours above the minimum to the second, wherever the day begins', () => {
    for (const hour of [0, 3, 7, 11, 13, 17, 21, 23.9])
      for (const minimum of [281, 286, 290, 291.7, 296, 299]) {
        // T = 290 - 10 cos(2 pi phase) is above the minimum for this share of the day.
        const share = 1 - Math.acos((290 - minimum) / 10) / Math.PI;
        expect(swing(hour * 3600, minimum).creditedTime).toBeCloseTo(86_400 * share, 3);
      }
  });

  it('credits a part of a day by the same clock', () => {
    // From noon of the swing it is warm for as long again as since it warmed.
    const half = (86_400 * (1 - Math.acos(-6 / 10) / Math.PI)) / 2;
    const late = swing(43_200, 296, half * 0.9995).creditedTime;
    expect(late).toBeCloseTo(half * 0.9995, 3);
    expect(swing(43_200, 296, half * 1.2).creditedTime).toBeCloseTo(half, 3);
  });
});

describe('forms that end', () => {
  it('a reaction below the first order is done at a time, and not before', () => {
    const at = (time: number) => nthOrderConversion(si({ rateConstant: 1e-4, order: 0.5, time }));
    // (1 - n) k t = 1 at 20000 s; just before, 1 - (1 - (1 - n) k t)^2.
    expect(at(20_000 * (1 + 1e-9))).toBe(1);
    expect(at(20_000 * (1 - 5e-4))).toBeCloseTo(1 - 25e-8, 12);
    expect(at(20_000 * (1 - 5e-4))).toBeLessThan(1);
  });

  it('a bond that gains by heat earns nothing, one that loses a little loses it', () => {
    const at = (share: number) =>
      leakTemperatureFactor(
        si({
          ...{ energyAtDesignTemperature: 200 * share, energyAtTestTemperature: 200 },
          ...{ modulusAtDesignTemperature: 1e9, modulusAtTestTemperature: 1e9 },
        }),
      );
    expect(at(1.0005)).toBe(1);
    expect(at(0.9995)).toBeCloseTo(Math.sqrt(0.9995), 12);
  });

  it('the axial line of a laminate alone has a limit only below E_c/(2 E_a) in contraction', () => {
    const has = (poissonRatio: number) =>
      pressureIgnoredAxialHasLimit(si({ hoopModulus: 10e9, axialModulus: 20e9, poissonRatio }));
    expect([has(0.25 - 1e-9), has(0.25 + 1e-9)]).toEqual([true, false]);
  });

  it('a sheet is rolled before it is laid where bending alone would yield it', () => {
    // E t/(D + t) against the yield strength.
    const forming = (modulus: number) =>
      backingSheet(si({ thickness: 0.0004, modulus, yieldStrength: 200e6, diameter: 0.3996 })).forming;
    expect([forming(200e9 * (1 - 1e-9)), forming(200e9 * (1 + 1e-9))]).toEqual(['elastic', 'pre-roll']);
  });

  it('a pipe under a band yields at 2 S t/D, and buckling and yield add up as 1/p', () => {
    const given = {
      outsideDiameter: 0.2,
      wallThickness: 0.005,
      modulus: 200e9,
      poissonRatio: 0.3,
      yieldStrength: 250e6,
    };
    const { yielding, pressure } = pipeUnderBand(si({ ...given, factor: 2 }));
    expect(yielding).toBeCloseTo(12.5e6, 3);
    const buckling = ((2 * 200e9) / (1 - 0.09)) * (0.005 / 0.2) ** 3;
    expect(2 * pressure * (1 / buckling + 1 / 12.5e6)).toBeCloseTo(1, 9);
  });

  it('a survey may be as strong as a number can hold', () => {
    const at = (allowableStress: number, jointFactor = 1) =>
      mawpAll(
        si({ outsideDiameter: 0.5, allowableStress, jointFactor, wallThickness: Float64Array.of(0.01) }),
        new Float64Array(1),
      );
    const most = Number.MAX_VALUE / 4;
    expect(() => at(most * (1 - 1e-9))).not.toThrow();
    expect(() => at(most * (1 - 1e-9), 0.5)).not.toThrow();
    expect(() => at(most * (1 + 1e-9))).toThrow('4 allowableStress');
  });

  it('a loss through the wall has no remaining strength', () => {
    const at = (defectDepth: number) => () =>
      remainingStrength(
        si({
          ...{ outsideDiameter: 0.3, wallThickness: 0.01, defectDepth, defectLength: 0.1, defectWidth: 0.05 },
          ...{ yieldStrength: 250e6, tensileStrength: 400e6, maximumPressure: 5e6, safetyFactor: 1.5 },
        }),
      );
    expect(at(0.01 * (1 - 1e-9))).not.toThrow();
    expect(at(0.01 * (1 + 1e-9))).toThrow('defectDepth');
  });

  it('Level 2 stands on the inside diameter too', () => {
    const profile = [0, 0.02, 0.08, 0.1].map((position, i) => ({ position, depth: i === 1 || i === 2 ? 0.004 : 0 }));
    const at = (outsideDiameter: number) =>
      assessLocalMetalLossProfile(
        si({
          input: {
            outsideDiameter,
            wallThickness: 0.01,
            defectDepth: 0.004,
            defectLength: 0.1,
            maximumPressure: 6e6,
            profile,
          },
        }),
      )?.safePressure ?? Number.NaN;
    // The flat 60 mm between the slopes, or more of the slopes: the weakest of all stretches on D_i = 0.2 m.
    const depthAt = (x: number): number => 0.004 * Math.max(0, Math.min(x / 0.02, 1, (0.1 - x) / 0.02));
    let least = 1;
    for (const [from, to] of [
      [0.02, 0.08],
      [0, 0.08],
      [0.02, 0.1],
      [0, 0.1],
    ] as const) {
      let area = 0;
      const cells = 6000;
      for (let i = 0; i < cells; i++) area += depthAt(from + ((i + 0.5) / cells) * (to - from)) * ((to - from) / cells);
      const lost = area / ((to - from) * 0.01);
      const lambda = (1.285 * (to - from)) / Math.sqrt(0.2 * 0.01);
      const coefficients = [
        1.001, -0.014195, 0.2909, -0.09642, 0.02089, -0.003054, 2.957e-4, -1.8462e-5, 7.1553e-7, -1.5631e-8, 1.4656e-10,
      ];
      const Mt = coefficients.reduce((sum, c, power) => sum + c * lambda ** power, 0);
      least = Math.min(least, (1 - lost) / (1 - lost / Mt));
    }
    expect(least).toBeLessThan(0.9);
    expect(at(0.22) / ((6e6 * least) / 0.9)).toBeCloseTo(1, 5);
  });

  it('a test pressure that squeezes water away is refused', () => {
    const at = (pressure: number) => () =>
      waterCompressionFactor(si({ pressure, compressibility: 1e-3, referencePressure: 1e5 }));
    expect(at(1e8 * (1 - 1e-9))).not.toThrow();
    expect(at(1e8 * (1 + 1e-9))).toThrow('loss of volume');
    const blocked = (more: object) => () =>
      blockedLinePressure(
        si({
          ...{ pressure: 5e6, startTemperature: 290, endTemperature: 290, startWaterFactor: 1, endWaterFactor: 1 },
          ...{ outsideDiameter: 0.3, wallThickness: 0.01, ...more },
        }),
      );
    expect(blocked({ pressure: 1e8 * (1 - 5e-4), compressibility: 1e-3, referencePressure: 1e5 })).not.toThrow(
      'loss of',
    );
    expect(blocked({ pressure: 1e8 * (1 + 5e-4), compressibility: 1e-3, referencePressure: 1e5 })).toThrow('loss of');
    const cold = (expansion: number) =>
      blocked({ pipeExpansion: expansion, endTemperature: 280, referenceTemperature: 290 });
    expect(cold(0.1 * (1 - 5e-4))).not.toThrow('warming of the pipe');
    expect(cold(0.1 * (1 + 5e-4))).toThrow('warming of the pipe');
  });

  it('a shop mean without a reading is not one', () => {
    expect(() => barcolShopMean(si({ readings: [] }))).toThrow('0 readings');
    expect(() => barcolShopMean(si({ readings: [50] }))).toThrow('ten to twelve');
  });
});

describe('pipe and laminate that share the load both ways', () => {
  const pair = {
    ...{ substrateModulus: 200e9, substratePoisson: 0.3, substrateWall: 0.005, hoopModulus: 40e9, axialModulus: 20e9 },
    ...{ poissonRatio: 0.2, outsideDiameter: 0.3, wrappedDiameter: 0.306, allowableStress: 150e6, hoopStrain: 0.002 },
    axialStrain: 0.0004,
  };

  it('are held at both stresses of the pipe and at both strains, each for itself', () => {
    const [E, nu] = [200e9 / 0.91, 0.3];
    const at = (round: number, along: number) =>
      boundsOf(si(pair)).map((bound) => bound.round * round + bound.along * along);
    const [hoop, axial] = [0.0007, 0.0003];
    const found = at(hoop, axial);
    [E * (hoop + nu * axial), E * (axial + nu * hoop), hoop, axial].forEach((value, index) => {
      expect((found[index] ?? Number.NaN) / value).toBeCloseTo(1, 12);
    });
    expect(boundsOf(si(pair)).map(({ limit }) => limit)).toEqual([150e6, 150e6, 0.002, 0.0004]);
  });
});
