import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type ActivationEnergy,
  density,
  length,
  molarEnthalpy,
  molarMass,
  type Ratio,
  rateConstant,
  specificEnergy,
  specificHeat,
  temperature,
  temperatureDifference,
  thermalConductivity,
} from '../../../src/quantity/index.js';
import {
  adiabaticRise,
  adiabaticRiseCanOverheat,
  hardenerParts,
  heatOfReaction,
  hydrogenEquivalentWeight,
  inductionTime,
  runawayParameter,
  runawayParameterBeyondCritical,
} from '../../../src/resin/index.js';
import { span } from '../../properties/spans.js';

const run = <T>(property: fc.IProperty<T>) => fc.assert(property, { seed: 20261125, numRuns: 300 });

describe('the heat of a mix', () => {
  it('rises in proportion to its resin', () => {
    run(
      fc.property(span(0.05, 1), span(5e4, 6e5), span(800, 2500), (part, H, c) => {
        const pure = adiabaticRise({ heatOfReaction: specificEnergy.JPerKg(H), specificHeat: specificHeat.JPerKgK(c) });
        const filled = adiabaticRise({
          heatOfReaction: specificEnergy.JPerKg(H),
          specificHeat: specificHeat.JPerKgK(c),
          resinMassFraction: part as Ratio,
        });
        expect(filled / pure / part).toBeCloseTo(1, 9);
        expect((pure * c) / H).toBeCloseTo(1, 12);
      }),
    );
  });

  it('is noted above 100 K, or above the rise that is named', () => {
    const pot = (H: number, rise?: number) =>
      adiabaticRiseCanOverheat({
        heatOfReaction: specificEnergy.JPerKg(H),
        specificHeat: specificHeat.JPerKgK(1000),
        overheatingRise: rise === undefined ? undefined : temperatureDifference.kelvin(rise),
      });
    expect([pot(99e3), pot(101e3), pot(99e3, 90), pot(101e3, 110)]).toEqual([false, true, true, false]);
  });

  it('is shared by resin and hardener: one mole of epoxide in the mass of both', () => {
    const hydrogenEquivalent = hydrogenEquivalentWeight({ molarMass: molarMass.gPerMol(103), activeHydrogens: 5 });
    const epoxyEquivalentWeight = molarMass.gPerMol(200);
    const parts = hardenerParts({ hydrogenEquivalentWeight: hydrogenEquivalent, epoxyEquivalentWeight });
    const H = heatOfReaction({
      heatPerEpoxide: molarEnthalpy.kJPerMol(107),
      epoxyEquivalentWeight,
      hydrogenEquivalentWeight: hydrogenEquivalent,
    });
    // 200 g of resin hold one mole and take 2 * parts grams of hardener.
    expect(H).toBeCloseTo(107e3 / ((200 + 2 * parts) / 1000), 6);
  });
});

describe('a lump of mix', () => {
  const lump = {
    heatOfReaction: specificEnergy.JPerKg(4e5),
    density: density.kgPerM3(1150),
    rateConstant: rateConstant.perS(1e-5),
    activationEnergy: 55e3 as ActivationEnergy,
    thermalConductivity: thermalConductivity.WPerMK(0.2),
    temperature: temperature.kelvin(298.15),
    size: length.mm(20),
  };

  it('is four times nearer to running away at twice the size, and a slab before a cylinder before a sphere', () => {
    const slab = runawayParameter({ ...lump, shape: 'slab' });
    expect(runawayParameter({ ...lump, shape: 'slab', size: length.mm(40) }) / slab).toBeCloseTo(4, 9);
    expect(slab).toBeGreaterThan(runawayParameter({ ...lump, shape: 'cylinder' }));
    expect(runawayParameter({ ...lump, shape: 'cylinder' })).toBeGreaterThan(
      runawayParameter({ ...lump, shape: 'sphere' }),
    );
  });

  it('is noted when it runs away', () => {
    const part = runawayParameter({ ...lump, shape: 'slab' });
    const size = length.mm(20 / Math.sqrt(part));
    expect(runawayParameterBeyondCritical({ ...lump, shape: 'slab', size: (size * 1.001) as typeof size })).toBe(true);
    expect(runawayParameterBeyondCritical({ ...lump, shape: 'slab', size: (size * 0.999) as typeof size })).toBe(false);
  });

  it('without heat loss has less time when it is faster', () => {
    const time = (k: number) =>
      inductionTime({ ...lump, specificHeat: specificHeat.JPerKgK(1900), rateConstant: rateConstant.perS(k) });
    expect(time(1e-5) / time(2e-5)).toBeCloseTo(2, 9);
  });
});
