import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  activationEnergy,
  type Density,
  density,
  length,
  type Mass,
  type MolarMass,
  molarHeatCapacity,
  rateConstant,
  specificEnergy,
  specificHeat,
  temperature,
  thermalConductivity,
} from '../../src/quantity/index.js';
import {
  batchPlan,
  blendEquivalentWeight,
  inductionTime,
  type LumpShape,
  mixDensity,
  runawayParameter,
} from '../../src/resin/index.js';
import { densityByLitres, massPerGroup, mixByHand } from './batches-by-hand.js';
import { criticalHeat, timeToRunaway } from './thermal-runaway.js';

const run = <T>(property: fc.IProperty<T>) => fc.assert(property, { seed: 20261125, numRuns: 300 });
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("batches 'resin/batch-plan' against mixing by hand", () => {
  it('need as many pots and kits', () => {
    run(
      fc.property(span(0.1, 40), span(0.3, 8), span(0.3, 8), fc.boolean(), (job, usable, kit, whole) => {
        fc.pre(!whole || kit <= usable);
        const plan = batchPlan({
          mass: job as Mass,
          usableMass: usable as Mass,
          kitMass: kit as Mass,
          wholeKits: whole,
        });
        const byHand = mixByHand(job, usable, kit, whole);
        expect({ pots: plan.batches, kits: plan.kits }).toEqual(byHand);
        expect((plan.kits * kit - plan.surplus) / job).toBeCloseTo(1, 9);
      }),
    );
  });

  it('name what limits them', () => {
    const plan = (job: number, usable: number, kit: number) =>
      batchPlan({ mass: job as Mass, usableMass: usable as Mass, kitMass: kit as Mass, wholeKits: false }).governing;
    expect(plan(1, 2, 3)).toBe('job');
    expect(plan(10, 2, 3)).toBe('working time');
    expect(plan(10, 3, 2)).toBe('kit');
  });
});

describe("the density 'resin/mix-density'", () => {
  it('is the mass of the litres poured together', () => {
    const part = fc.tuple(span(0.01, 10), span(700, 12000));
    run(
      fc.property(fc.array(part, { minLength: 1, maxLength: 6 }), (parts) => {
        const components = parts.map(([mass, partDensity]) => ({
          mass: mass as Mass,
          density: partDensity as Density,
        }));
        expect(mixDensity({ components }) / densityByLitres(parts)).toBeCloseTo(1, 12);
      }),
    );
  });
});

describe("the equivalent weight 'resin/blend-equivalent-weight'", () => {
  it('is the mass for each reactive group, filler included', () => {
    const part = fc.tuple(span(0.01, 10), span(0.02, 0.6));
    run(
      fc.property(fc.array(part, { minLength: 1, maxLength: 6 }), span(0, 5), (parts, inert) => {
        const components = parts.map(([mass, E]) => ({ mass: mass as Mass, equivalentWeight: E as MolarMass }));
        const blend = blendEquivalentWeight({ components, inertMass: inert as Mass });
        expect(blend / massPerGroup(parts, inert)).toBeCloseTo(1, 12);
      }),
    );
  });
});

describe('a lump that heats itself', () => {
  const lump = {
    heatOfReaction: specificEnergy.JPerKg(4e5),
    density: density.kgPerM3(1150),
    rateConstant: rateConstant.perS(1e-5),
    activationEnergy: activationEnergy.JPerMol(55e3),
    thermalConductivity: thermalConductivity.WPerMK(0.2),
    temperature: temperature.kelvin(298.15),
    gasConstant: molarHeatCapacity.JPerMolK(8.31446261815324),
  };

  it.each([
    ['slab', 0],
    ['cylinder', 1],
    ['sphere', 2],
  ] as const)('of the shape of a %s runs away where the steady state ends', (shape: LumpShape, j) => {
    // Size at which the marched limit is reached; the printed limits are its roundings to two decimals.
    const group = (4e5 * 1150 * 1e-5 * 55e3) / (0.2 * 8.31446261815324 * 298.15 ** 2);
    const size = Math.sqrt(criticalHeat(j) / group);
    expect(Math.abs(runawayParameter({ ...lump, shape, size: length.m(size) }) - 1)).toBeLessThan(
      0.005 / criticalHeat(j),
    );
  });

  it('without heat loss runs away after the induction time', () => {
    const b = (8.31446261815324 * 298.15 ** 2) / 55e3;
    const time = inductionTime({ ...lump, specificHeat: specificHeat.JPerKgK(1900) });
    expect(time / timeToRunaway(1900, 4e5, 1e-5, b)).toBeCloseTo(1, 7);
  });
});
