import { describe, expect, it } from 'vitest';
import { acceptRepair } from '../../src/acceptance/index.js';
import { assessLocalMetalLoss } from '../../src/pipe/api579/assess-api579.js';
import {
  b31g1991AllowableDepth,
  b31g1991AllowableLength,
  b31gAll,
  b31gAllowableLength,
  b31gOriginal,
  criticalThroughWallLength,
  dnvAll,
  dnvPartA,
  dnvSingleDefect,
  mawpAll,
  modifiedB31g,
  modifiedB31gAll,
} from '../../src/pipe/index.js';
import type { GaugePressure, Length, Ratio, Stress } from '../../src/quantity/index.js';

/** Where a form steps or ends inside a formula: the values on both sides of the step, as the clause has them. */

const either = [1 - 1e-6, 1 + 1e-6] as const;
const [D, t] = [0.5 as Length, 0.01 as Length];
const pipe = { outsideDiameter: D, wallThickness: t };
const flowStress = 300e6 as Stress;
/** A length whose L^2/(D t) is this. */
const lengthAt = (z: number): Length => Math.sqrt(z * D * t) as Length;

describe('a survey steps where the formula of one loss does', () => {
  const depth = Float64Array.of(0.004);
  it.each(either)('original B31G at z = 20, %s', (off) => {
    const defectLength = lengthAt(20 * off);
    const out = b31gAll({ ...pipe, flowStress, depth, length: Float64Array.of(defectLength) }, new Float64Array(1));
    expect(out[0]).toBe(b31gOriginal({ ...pipe, flowStress, defectDepth: 0.004 as Length, defectLength }));
    // Beyond 20 the loss is a groove without end: S (2 t/D)(1 - d/t).
    if (off > 1) expect(out[0]).toBeCloseTo(300e6 * 0.04 * 0.6, 3);
    else expect(out[0]).toBeGreaterThan(300e6 * 0.04 * 0.62);
  });
  it.each(either)('modified B31G at z = 50, %s', (off) => {
    const defectLength = lengthAt(50 * off);
    const out = modifiedB31gAll(
      { ...pipe, flowStress, depth, length: Float64Array.of(defectLength) },
      new Float64Array(1),
    );
    expect(out[0]).toBe(modifiedB31g({ ...pipe, flowStress, defectDepth: 0.004 as Length, defectLength }));
    // M is sqrt(1 + 0.6275 z - 0.003375 z^2) up to 50, 4.8926 there, and 0.032 z + 3.3 above, 4.9.
    const M = off > 1 ? 0.032 * 50 * off + 3.3 : Math.sqrt(1 + 0.6275 * 50 * off - 0.003375 * (50 * off) ** 2);
    expect(out[0]).toBeCloseTo((300e6 * 0.04 * (1 - 0.85 * 0.4)) / (1 - (0.85 * 0.4) / M), 2);
  });
  it('DNV without an edition factor is that of the older editions', () => {
    const row = { ...pipe, tensileStrength: 450e6 as Stress, depth, length: Float64Array.of(0.2) };
    const one = dnvSingleDefect({ ...row, defectDepth: 0.004 as Length, defectLength: 0.2 as Length });
    expect(dnvAll(row, new Float64Array(1))[0]).toBe(one);
    expect(dnvAll({ ...row, editionFactor: 1.05 }, new Float64Array(1))[0]).toBeCloseTo(1.05 * one, 3);
  });
  it('the allowable pressure of a wall ends at a sixth of the diameter, and at full strength', () => {
    const given = { outsideDiameter: D, allowableStress: 100e6 as Stress, jointFactor: 1 };
    const at = (wall: number, more = {}) =>
      mawpAll({ ...given, ...more, wallThickness: Float64Array.of(wall) }, new Float64Array(1));
    for (const more of [{}, { supplementalThickness: 0.001 as Length }]) {
      expect(at(0.5 / 6 - 1e-8, more)[0]).toBeGreaterThan(0);
      expect(() => at(0.5 / 6 + 1e-8, more)).toThrow(/wallThickness\[0\].*must be below/u);
      expect(() => at(0.2, more)).toThrow('0.0833');
    }
    expect(() => at(0.01, { jointFactor: 1 + 1e-6 })).toThrow('jointFactor');
    expect(at(0.01, { jointFactor: 1, temperatureCoefficient: 1 })[0]).toBeCloseTo((2 * 100e6 * 0.01) / 0.48, 3);
    expect(() => at(0.01, { temperatureCoefficient: 1 + 1e-6 })).toThrow('temperatureCoefficient');
    expect(() => at(0.01, { allowableStress: 1e308 as Stress })).toThrow(
      '4 allowableStress jointFactor outsideDiameter',
    );
    expect(() => at(0.01, { allowableStress: 8.98e307 as Stress })).toThrow('4 allowableStress');
    expect(() => at(0.01, { allowableStress: 8.984e307 as Stress })).toThrow('4 allowableStress');
  });
});

describe('the manual of 1991', () => {
  const given = { designPressure: 6e6 as GaugePressure, operatingPressure: 5e6 as GaugePressure };
  it.each(either)('steps at A = 4, %s', (off) => {
    const k = (1.1 * 6) / 5;
    const depth = b31g1991AllowableDepth({ ...given, wallThickness: t, lengthFactor: 4 * off });
    const form = off > 1 ? 1 - 1 / k : (1.5 * (k - 1)) / (k - 1 / Math.sqrt(17));
    expect(depth / (t * form)).toBeCloseTo(1, 5);
  });
  it.each(either)('sets no limit to the length where even a groove without end is safe, %s', (off) => {
    // k (1 - x) = 1
    const x = 1 - 5 / 6.6;
    const long = b31g1991AllowableLength({ ...given, ...pipe, defectDepth: (x * t * off) as Length });
    if (off < 1) expect(long).toBe('unlimited');
    else expect(long).toBeCloseTo((4 * Math.sqrt(D * t)) / 0.893, 6);
  });
  it.each(either)('caps B at 4 up to 0.175 of the wall, %s', (off) => {
    const x = 0.175 * off;
    const B = off > 1 ? Math.sqrt((x / (1.1 * x - 0.15)) ** 2 - 1) : 4;
    expect(b31gAllowableLength({ ...pipe, defectDepth: (x * t) as Length })).toBeCloseTo(
      1.12 * B * Math.sqrt(D * t),
      9,
    );
    if (off > 1) expect(B).toBeLessThan(4);
  });
});

describe('the longest slot that stays a leak', () => {
  it('is that of z = 50 between the two forms of the bulging factor', () => {
    const longest = (M: number): number =>
      criticalThroughWallLength({ ...pipe, flowStress, pressure: ((2 * t * flowStress) / (M * D)) as GaugePressure });
    const root = Math.sqrt(23.9375);
    expect(longest(root * (1 + 1e-6))).toBeCloseTo(0.5, 12);
    expect(longest(root * (1 + 1e-4))).toBeCloseTo(0.5, 12);
    expect(longest(root * (1 - 1e-4))).toBeLessThan(0.49995);
    expect(longest(4.9 * (1 - 1e-9))).toBeCloseTo(0.5, 12);
  });
});

describe('DNV with partial factors', () => {
  it.each(either)('holds nothing once the factored depth is the wall, %s', (off) => {
    const P = dnvPartA({
      ...pipe,
      tensileStrength: 450e6 as Stress,
      relativeDepth: 0.8 as Ratio,
      depthDeviation: 0 as Ratio,
      fractile: 0,
      defectLength: 0.2 as Length,
      resistanceFactor: 0.85,
      depthFactor: 1.25 * off,
    });
    if (off > 1) expect(P).toBe(0);
    else expect(P).toBeGreaterThan(0);
  });
});

describe('API 579-1, Level 1', () => {
  it('stands on the inside diameter, two walls less', () => {
    const assessed = (outsideDiameter: number, wallThickness: number) =>
      assessLocalMetalLoss({
        input: { outsideDiameter, wallThickness, defectDepth: 0.003, defectLength: 0.08, maximumPressure: 6e6 },
      } as never);
    // lambda = 1.285 s/sqrt(D_i t): the same D_i t gives the same factor.
    const { safePressure } = assessed(0.22, 0.01);
    const lambda = (1.285 * 0.08) / Math.sqrt(0.2 * 0.01);
    const Mt =
      1.001 -
      0.014195 * lambda +
      0.2909 * lambda ** 2 -
      0.09642 * lambda ** 3 +
      0.02089 * lambda ** 4 -
      0.003054 * lambda ** 5 +
      2.957e-4 * lambda ** 6 -
      1.8462e-5 * lambda ** 7 +
      7.1553e-7 * lambda ** 8 -
      1.5631e-8 * lambda ** 9 +
      1.4656e-10 * lambda ** 10;
    const factor = 0.7 / (1 - 0.3 / Mt);
    expect(safePressure / (6e6 * Math.min(1, factor / 0.9))).toBeCloseTo(1, 5);
    expect(factor).toBeLessThan(0.9);
  });
});

describe('the hardness of a repair', () => {
  const verdicts = (readings: readonly number[]) =>
    acceptRepair({
      laminateThickness: 0.01 as Length,
      throughWall: false,
      hardness: { scale: 'Shore D', readings, qualifiedHardness: 80, hasStopped: true },
    } as never).reasons.filter(({ holdPoint, found }) => holdPoint === 'hardness' && found !== undefined);

  it('that its record leaves open is nine tenths of the qualified in the mean, eight in each reading', () => {
    expect(verdicts([72, 72, 72, 72, 72])).toEqual([]);
    const [mean] = verdicts([72, 72, 72, 72, 71.9]);
    expect(mean?.limit?.value).toBe(0.9);
    expect(verdicts([80, 80, 80, 80, 64])).toEqual([]);
    const [single] = verdicts([80, 80, 80, 80, 63.9]);
    expect(single?.limit?.value).toBe(0.8);
  });
});
