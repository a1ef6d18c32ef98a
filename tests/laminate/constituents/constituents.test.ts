import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  acrossExpansionChamis,
  acrossExpansionSchapery,
  alongExpansion,
  chamisModulus,
  fabricModulus,
  halpinTsai,
  hotWetFactor,
  inverseRuleOfMixtures,
  mixedPoissonRatio,
  orientationFactor,
  ruleOfMixtures,
} from '../../../src/laminate/index.js';
import { modulus, temperature, thermalExpansion } from '../../../src/quantity/index.js';

const seeded = { seed: 20261125, numRuns: 200 };
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const glass = { fibreModulus: modulus.GPa(72.4), matrixModulus: modulus.GPa(3) };

describe('the modulus of a ply from its constituents', () => {
  it('lies between the inverse rule and the rule of mixtures, by Chamis and by Halpin and Tsai', () => {
    fc.assert(
      fc.property(span(0.05, 0.75), span(0.1, 20), (fibreVolumeFraction, shape) => {
        const least = inverseRuleOfMixtures({ ...glass, fibreVolumeFraction });
        const most = ruleOfMixtures({ ...glass, fibreVolumeFraction, voidFraction: 0 });
        for (const found of [
          chamisModulus({ ...glass, fibreVolumeFraction }),
          halpinTsai({ ...glass, fibreVolumeFraction, shape }),
        ]) {
          expect(found).toBeGreaterThanOrEqual(least);
          expect(found).toBeLessThanOrEqual(most);
        }
      }),
      seeded,
    );
  });

  it('by Halpin and Tsai tends to the two bounds as the shape goes to nothing and beyond limit', () => {
    const at = (shape: number) => halpinTsai({ ...glass, fibreVolumeFraction: 0.5, shape });
    expect(at(1e-9) / inverseRuleOfMixtures({ ...glass, fibreVolumeFraction: 0.5 })).toBeCloseTo(1, 8);
    expect(at(1e9) / ruleOfMixtures({ ...glass, fibreVolumeFraction: 0.5, voidFraction: 0 })).toBeCloseTo(1, 7);
  });

  it('is that of the matrix without fibre, and voids take from it', () => {
    expect(modulus.inGPa(chamisModulus({ ...glass, fibreVolumeFraction: 0 }))).toBeCloseTo(3, 12);
    const sound = ruleOfMixtures({ ...glass, fibreVolumeFraction: 0.5, voidFraction: 0 });
    expect(ruleOfMixtures({ ...glass, fibreVolumeFraction: 0.5, voidFraction: 0.03 })).toBeLessThan(sound);
    expect(() => ruleOfMixtures({ ...glass, fibreVolumeFraction: 0.7, voidFraction: 0.4 })).toThrow(/voidFraction/u);
  });

  it('of cloth with all its fibres one way is the rule of mixtures', () => {
    const directions = [{ angle: 0, share: 1 }] as never;
    const found = fabricModulus({
      ...glass,
      fibreVolumeFraction: 0.45,
      lengthFactor: 1,
      orientationFactor: orientationFactor({ directions }),
    });
    expect(found / ruleOfMixtures({ ...glass, fibreVolumeFraction: 0.45, voidFraction: 0 })).toBeCloseTo(1, 12);
    expect(() => orientationFactor({ directions: [] })).toThrow(/shares above 0/u);
  });
});

describe('the expansion of a ply from its constituents', () => {
  it('is theirs, where fibre and matrix expand alike and have one modulus and one ratio', () => {
    const alike = thermalExpansion.microPerK(20);
    const same = { fibreModulus: modulus.GPa(3), matrixModulus: modulus.GPa(3), fibreVolumeFraction: 0.4 };
    const along = alongExpansion({ ...same, fibreExpansion: alike, matrixExpansion: alike });
    expect(thermalExpansion.inMicroPerK(along)).toBeCloseTo(20, 10);
    const across = acrossExpansionSchapery({
      fibreExpansion: alike,
      matrixExpansion: alike,
      fibrePoisson: 0.3,
      matrixPoisson: 0.3,
      fibreVolumeFraction: 0.4,
      alongExpansion: along,
    });
    expect(thermalExpansion.inMicroPerK(across)).toBeCloseTo(20, 10);
  });

  it('across its fibres is that of the matrix by Chamis where there is no fibre', () => {
    const found = acrossExpansionChamis({
      fibreExpansion: thermalExpansion.microPerK(8),
      matrixExpansion: thermalExpansion.microPerK(60),
      matrixPoisson: 0.35,
      fibreModulus: modulus.GPa(230),
      alongModulus: modulus.GPa(3),
      fibreVolumeFraction: 0,
    });
    expect(thermalExpansion.inMicroPerK(found)).toBeCloseTo(60, 10);
    expect(mixedPoissonRatio({ fibrePoisson: 0.2, matrixPoisson: 0.35, fibreVolumeFraction: 0 })).toBe(0.35);
  });
});

describe('a matrix that is hot and wet', () => {
  const at = (serves: number) =>
    hotWetFactor({
      wetTransition: temperature.degC(90),
      dryTransition: temperature.degC(120),
      temperature: temperature.degC(serves),
      referenceTemperature: temperature.degC(23),
    });

  it('loses more the hotter it serves, and is refused at its wet glass transition', () => {
    expect(at(40)).toBeGreaterThan(at(60));
    expect(at(89.999)).toBeLessThan(0.004);
    expect(() => at(90)).toThrow(/must be below the glass transition when wet/u);
  });
});
