import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Density, density, type Mass, mass } from '../../../src/quantity/index.js';
import {
  batchSplit,
  conversionLimit,
  massParts,
  mixDensity,
  mixingRatioError,
  mixingRatioErrorTooLarge,
  volumeParts,
} from '../../../src/resin/index.js';
import { span } from '../../properties/spans.js';

const run = <T>(property: fc.IProperty<T>) => fc.assert(property, { seed: 20261125, numRuns: 300 });
const drawnDensity = span(700, 2500) as fc.Arbitrary<Density>;

describe('a mixing ratio', () => {
  it('goes from volume to mass and back', () => {
    run(
      fc.property(span(0.5, 100), span(0.5, 100), drawnDensity, drawnDensity, (partsA, partsB, densityA, densityB) => {
        const byMass = massParts({ partsA, partsB, densityA, densityB });
        const byVolume = volumeParts({ partsA: 100, partsB: byMass, densityA, densityB });
        expect(byVolume / ((100 * partsB) / partsA)).toBeCloseTo(1, 9);
      }),
    );
  });

  it('is the same by mass and by volume for equal densities', () => {
    const densities = { densityA: density.kgPerM3(1100), densityB: density.kgPerM3(1100) };
    expect(massParts({ partsA: 2, partsB: 1, ...densities })).toBeCloseTo(50, 12);
    expect(volumeParts({ partsA: 2, partsB: 1, ...densities })).toBeCloseTo(50, 12);
  });
});

describe('a batch', () => {
  it('is made of its two masses in the stated ratio, whatever the scale of the parts', () => {
    run(
      fc.property(span(0.01, 50), span(0.5, 100), span(0.5, 100), span(0.1, 10), (batch, partsA, partsB, scale) => {
        const { massA, massB } = batchSplit({ batchMass: batch as Mass, partsA, partsB });
        expect((massA + massB) / batch).toBeCloseTo(1, 12);
        expect(mixingRatioError({ massA, massB, partsA, partsB })).toBeCloseTo(1, 12);
        const again = batchSplit({ batchMass: batch as Mass, partsA: partsA * scale, partsB: partsB * scale });
        expect(again.massA / massA).toBeCloseTo(1, 12);
      }),
    );
  });

  it('that is more than 5 % off is noted', () => {
    const off = (massB: number) =>
      mixingRatioErrorTooLarge({ massA: mass.kg(1), massB: mass.kg(massB), partsA: 2, partsB: 1 });
    expect([0.47, 0.48, 0.5, 0.52, 0.53].map(off)).toEqual([true, false, false, false, true]);
  });

  it('cures no further than the scarcer side allows, on either side of the ratio', () => {
    const ratioError = mixingRatioError({ massA: mass.kg(1), massB: mass.kg(0.6), partsA: 2, partsB: 1 });
    const inverse = mixingRatioError({ massA: mass.kg(0.6), massB: mass.kg(1), partsA: 1, partsB: 2 });
    expect(conversionLimit({ ratioError })).toBeCloseTo(1 / 1.2, 12);
    expect(conversionLimit({ ratioError: inverse })).toBeCloseTo(1 / 1.2, 12);
  });
});

describe('the density of a mix', () => {
  it('lies between the densities of its components and does not ask for their order', () => {
    run(
      fc.property(drawnDensity, drawnDensity, span(0.01, 10), span(0.01, 10), (a, b, massA, massB) => {
        const first = { mass: massA as Mass, density: a };
        const second = { mass: massB as Mass, density: b };
        const rho = mixDensity({ components: [first, second] });
        expect(rho).toBeGreaterThanOrEqual(Math.min(a, b) * (1 - 1e-12));
        expect(rho).toBeLessThanOrEqual(Math.max(a, b) * (1 + 1e-12));
        expect(mixDensity({ components: [second, first] }) / rho).toBeCloseTo(1, 12);
      }),
    );
  });

  it('refuses an empty mix and names the component that is wrong', () => {
    expect(() => mixDensity({ components: [] })).toThrow(/number of components is 0/);
    const good = { mass: mass.kg(1), density: density.kgPerM3(1000) };
    expect(() => mixDensity({ components: [good, { ...good, mass: mass.kg(0) }] })).toThrow(
      /components\[1\]\.mass is 0 kg/,
    );
  });
});
