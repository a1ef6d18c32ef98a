import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  airTestEnergy,
  gasEnergyIsentropic,
  gasEnergyIsothermal,
  liquidTestEnergy,
  specificGasEnergyIsothermal,
  testDistance,
  testDistanceCloserThanRule,
  testDistanceEnergyAboveRule,
  tntEquivalent,
} from '../../../src/acceptance/index.js';
import {
  type AbsolutePressure,
  type Energy,
  energy,
  type GaugePressure,
  type Length,
  length,
  specificHeat,
  temperature,
  type Volume,
} from '../../../src/quantity/index.js';
import { evenSpan, run } from '../../properties/spans.js';

const atmosphere = 101325 as AbsolutePressure;
const V = 2 as Volume;
const gases = {
  isentropic: (p: number, volume: Volume = V) =>
    gasEnergyIsentropic({ pressure: p as AbsolutePressure, volume, atmosphere }),
  isothermal: (p: number, volume: Volume = V) =>
    gasEnergyIsothermal({ pressure: p as AbsolutePressure, volume, atmosphere }),
  air: (p: number, volume: Volume = V) => airTestEnergy({ pressure: p as AbsolutePressure, volume, atmosphere }),
};
const liquid = (p: number, volume: Volume = V) =>
  liquidTestEnergy({
    pressure: p as GaugePressure,
    volume,
    insideDiameter: length.mm(154.1),
    wallThickness: length.mm(7.1),
  });

describe.each(Object.entries(gases))('the energy of a gas test, %s', (name, storedEnergy) => {
  it('is nothing at the pressure of the atmosphere, and is refused below it', () => {
    expect(storedEnergy(101325)).toBeCloseTo(0, 6);
    expect(() => storedEnergy(101324)).toThrow(/atmosphere/u);
  });

  it('grows with pressure, more than in proportion, and in proportion to the volume', () => {
    run(
      fc.property(evenSpan(2e5, 1e7), evenSpan(1.01, 2), (p, times) => {
        expect(storedEnergy(p * times) / storedEnergy(p)).toBeGreaterThan(times);
        expect(storedEnergy(p, 6 as Volume) / storedEnergy(p)).toBeCloseTo(3, 9);
      }),
    );
  });

  it('keeps its digits close to the atmosphere', () => {
    // To first order: V dp/k by the isentropic law, 2.5 times 0.286 V dp for air, nothing by the isothermal one.
    const dp = 2 ** -16;
    const first = { isentropic: 1 / 1.4, air: 2.5 * 0.286, isothermal: 0 }[name] ?? Number.NaN;
    expect(storedEnergy(101325 + dp) / (2 * dp)).toBeCloseTo(first, 8);
  });

  it('is many times that of water at the same pressure', () => {
    run(
      fc.property(evenSpan(1e5, 2e7), (p) => {
        expect(storedEnergy(p + 101325) / liquid(p).total).toBeGreaterThan(40);
      }),
    );
  });
});

describe('the energy of a gas', () => {
  it('per kilogram is that of the volume which a kilogram fills', () => {
    run(
      fc.property(evenSpan(2e5, 2e7), (p) => {
        const volume = ((287 * 298) / p) as Volume;
        const pressure = p as AbsolutePressure;
        const a = specificGasEnergyIsothermal({
          gasConstant: specificHeat.kJPerKgK(0.287),
          temperature: temperature.kelvin(298),
          pressure,
          atmosphere,
        });
        expect(a / gases.isothermal(p, volume)).toBeCloseTo(1, 9);
      }),
    );
  });

  it('is larger for a lower ratio of heat capacities', () => {
    run(
      fc.property(evenSpan(2e5, 2e7), evenSpan(1.05, 1.5), evenSpan(0.01, 0.2), (p, k, more) => {
        const at = (heatCapacityRatio: number): number =>
          gasEnergyIsentropic({ pressure: p as AbsolutePressure, volume: V, atmosphere, heatCapacityRatio });
        expect(at(k)).toBeGreaterThan(at(k + more));
      }),
    );
    expect(() =>
      gasEnergyIsentropic({ pressure: 1e6 as AbsolutePressure, volume: V, atmosphere, heatCapacityRatio: 1 }),
    ).toThrow(/above 1/u);
  });

  it('is larger at one temperature than without heat at high pressure, and smaller near the atmosphere', () => {
    expect(gases.isothermal(2e6)).toBeGreaterThan(gases.isentropic(2e6));
    expect(gases.isothermal(3e5)).toBeLessThan(gases.isentropic(3e5));
  });
});

describe('the energy of a liquid test', () => {
  it('goes with the square of the pressure, and adds up', () => {
    run(
      fc.property(evenSpan(1e5, 1e7), (p) => {
        const { total, liquid: water, wall } = liquid(p);
        expect(liquid(2 * p).total / total).toBeCloseTo(4, 9);
        expect((water + wall) / total).toBeCloseTo(1, 12);
      }),
    );
  });

  it('of 100 m of 154.1 mm bore at 2 MPa is about 3350 times less in the water than in air', () => {
    const volume = ((Math.PI / 4) * 0.1541 * 0.1541 * 100) as Volume;
    const air = airTestEnergy({ pressure: 2.101e6 as AbsolutePressure, volume });
    expect(air / liquid(2e6, volume).liquid / 3350).toBeCloseTo(1, 2);
  });
});

describe('TNT and distance', () => {
  it('put more energy further away, and never closer than the floors', () => {
    run(
      fc.property(evenSpan(0, 400e6), evenSpan(0, 100e6), (E, more) => {
        const here = testDistance({ energy: E as Energy });
        expect(testDistance({ energy: (E + more) as Energy })).toBeGreaterThanOrEqual(here);
        expect(here).toBeGreaterThanOrEqual(30);
      }),
    );
  });

  it('follow the cube root of twice the TNT above the floors', () => {
    run(
      fc.property(evenSpan(10e6, 500e6), (E) => {
        const storedEnergy = E as Energy;
        const scaled = testDistance({ energy: storedEnergy }) / 20;
        expect((scaled * scaled * scaled) / (2 * tntEquivalent({ energy: storedEnergy }))).toBeCloseTo(1, 9);
      }),
    );
  });

  it('note an energy beyond the rule and a scaled distance below its least', () => {
    expect(testDistanceEnergyAboveRule({ energy: energy.MJ(271) })).toBe(false);
    expect(testDistanceEnergyAboveRule({ energy: energy.MJ(271.1) })).toBe(true);
    expect(testDistanceCloserThanRule({ energy: energy.MJ(1) })).toBe(false);
    expect(testDistanceCloserThanRule({ energy: energy.MJ(1), scaledDistance: length.m(19) })).toBe(true);
    const swapped = { energy: energy.MJ(1), lowEnergy: energy.MJ(300), highEnergy: energy.MJ(200) };
    expect(() => testDistance(swapped)).toThrow(/upper energy/u);
    expect(testDistance({ energy: energy.MJ(1), lowDistance: 70 as Length })).toBe(70);
  });
});
