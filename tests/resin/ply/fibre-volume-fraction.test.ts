import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type ArealWeight,
  area,
  arealWeight,
  type Density,
  density,
  type Length,
  type Mass,
  mass,
  type Ratio,
  ratio,
} from '../../../src/quantity/index.js';
import {
  arealResin,
  burnOff,
  burnOffVoidsBelowZero,
  fibreMassFraction,
  fibreVolumeFraction,
  laminateResin,
  measuredFibreFraction,
  plyThickness,
  prepregThickness,
  resinForFibre,
} from '../../../src/resin/index.js';
import { span } from '../../properties/spans.js';

const run = <T>(property: fc.IProperty<T>) => fc.assert(property, { seed: 20261125, numRuns: 300 });
const share = span(0.05, 1) as fc.Arbitrary<Ratio>;
const voids = span(0, 0.2) as fc.Arbitrary<Ratio>;
const densities = fc.record({ fibreDensity: span(1400, 2700), resinDensity: span(950, 1400) }) as fc.Arbitrary<{
  fibreDensity: Density;
  resinDensity: Density;
}>;
const weight = span(0.1, 2) as fc.Arbitrary<ArealWeight>;

describe('fibre fractions', () => {
  it('go from mass to volume and back', () => {
    run(
      fc.property(share, densities, (w, rho) => {
        const volume = fibreVolumeFraction({ fibreMassFraction: w, ...rho });
        expect(fibreMassFraction({ fibreVolumeFraction: volume, ...rho }) / w).toBeCloseTo(1, 9);
      }),
    );
  });

  it('come out of a burn-off as they went into the sample, voids included', () => {
    run(
      fc.property(share, voids, densities, (w, v, rho) => {
        fc.pre(w < 0.999);
        const sample = 0.005;
        const solid = (sample * w) / rho.fibreDensity + (sample * (1 - w)) / rho.resinDensity;
        const laminateDensity = ((sample / solid) * (1 - v)) as Density;
        const burnt = burnOff({ sampleMass: sample as Mass, fibreMass: (sample * w) as Mass, laminateDensity, ...rho });
        expect(burnt.voidFraction).toBeCloseTo(v, 9);
        expect(burnt.fibreVolumeFraction).toBeCloseTo(
          fibreVolumeFraction({ fibreMassFraction: w, voidFraction: v, ...rho }),
          9,
        );
        expect(burnt.fibreMassFraction).toBeCloseTo(w, 12);
      }),
    );
  });

  it('below zero voids are returned as they are, and noted from -0.5 %', () => {
    const burn = (resinDensity: number) => ({
      sampleMass: mass.g(5),
      fibreMass: mass.g(3.25),
      laminateDensity: density.gPerCm3(resinDensity),
      fibreDensity: density.gPerCm3(2.54),
      resinDensity: density.gPerCm3(1.18),
    });
    expect(burnOff(burn(1.815)).voidFraction).toBeLessThan(0);
    expect(burnOffVoidsBelowZero(burn(1.815))).toBe(false);
    expect(burnOffVoidsBelowZero(burn(1.83))).toBe(true);
  });
});

describe('ply thickness', () => {
  it('holds the fibre at its volume fraction', () => {
    run(
      fc.property(weight, share, voids, densities, (fabricWeight, w, v, rho) => {
        const input = { arealWeight: fabricWeight, fibreMassFraction: w, voidFraction: v, ...rho };
        const thickness = plyThickness(input);
        const measured = measuredFibreFraction({
          plies: 1,
          arealWeight: fabricWeight,
          fibreDensity: rho.fibreDensity,
          thickness: (thickness * (1 + 1e-12)) as Length,
        });
        expect(measured / fibreVolumeFraction(input)).toBeCloseTo(1, 9);
      }),
    );
  });

  it('is the same from the dry fabric and from the total weight', () => {
    run(
      fc.property(weight, share, densities, (fabricWeight, w, rho) => {
        const totalArealWeight = (fabricWeight / w) as ArealWeight;
        const fromTotal = prepregThickness({ totalArealWeight, fibreMassFraction: w, ...rho });
        expect(fromTotal / plyThickness({ arealWeight: fabricWeight, fibreMassFraction: w, ...rho })).toBeCloseTo(1, 9);
      }),
    );
  });

  it('that is less than the fibre alone is refused', () => {
    expect(() =>
      measuredFibreFraction({
        plies: 10,
        arealWeight: arealWeight.gPerM2(450),
        fibreDensity: density.gPerCm3(2.54),
        thickness: 0.0017 as Length,
      }),
    ).toThrow(/at least that of the fibre alone/);
  });
});

describe('resin for a wet lay-up', () => {
  it('is the resin of the fibre in its plies, with waste and primer on top', () => {
    run(
      fc.property(span(0.1, 50), weight, share, span(0, 0.4), span(0, 2), (A, fabricWeight, w, omega, primer) => {
        const fibreMass = (A * fabricWeight) as Mass;
        const { resinMass, laminateMass } = resinForFibre({ fibreMass, fibreMassFraction: w });
        expect((resinMass + fibreMass) / laminateMass).toBeCloseTo(1, 9);
        const all = laminateResin({
          fabricArea: area.m2(A),
          arealWeight: fabricWeight,
          fibreMassFraction: w,
          waste: ratio.fraction(omega),
          primerMass: mass.kg(primer),
        });
        expect(all).toBeCloseTo(resinMass * (1 + omega) + primer, 9);
        expect(A * arealResin({ arealWeight: fabricWeight, fibreMassFraction: w })).toBeCloseTo(resinMass, 9);
      }),
    );
  });

  it('is none for bare fibre and more for less fibre', () => {
    const input = { fabricArea: area.m2(2), arealWeight: arealWeight.gPerM2(450) };
    expect(laminateResin({ ...input, fibreMassFraction: ratio.fraction(1) })).toBe(0);
    expect(laminateResin({ ...input, fibreMassFraction: ratio.fraction(0.5) })).toBeCloseTo(0.9 * 1.15, 12);
    expect(laminateResin({ ...input, fibreMassFraction: ratio.fraction(0.4) })).toBeGreaterThan(0.9 * 1.15);
  });
});
