import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Mass, mass, massFlow, ratio, time } from '../../../src/quantity/index.js';
import {
  batchPlan,
  leastWeighedMass,
  usableMass,
  weighingError,
  weighingErrorTooLarge,
} from '../../../src/resin/index.js';
import { span } from '../../properties/spans.js';

const run = <T>(property: fc.IProperty<T>) => fc.assert(property, { seed: 20261125, numRuns: 300 });
const masses = fc.tuple(span(0.1, 40), span(0.3, 8), span(0.3, 8));

describe('batches', () => {
  it('never become fewer when what can be placed is halved', () => {
    run(
      fc.property(masses, ([job, usable, kit]) => {
        const plan = (part: number) =>
          batchPlan({ mass: job as Mass, usableMass: (usable * part) as Mass, kitMass: kit as Mass, wholeKits: false });
        expect(plan(0.5).batches).toBeGreaterThanOrEqual(plan(1).batches);
        expect(plan(0.5).kits).toBe(plan(1).kits);
      }),
    );
  });

  it('make up the job, and none is larger than the kit or what can be placed', () => {
    run(
      fc.property(masses, ([job, usable, kit]) => {
        const plan = batchPlan({
          mass: job as Mass,
          usableMass: usable as Mass,
          kitMass: kit as Mass,
          wholeKits: false,
        });
        expect((plan.batches * plan.batchMass) / job).toBeCloseTo(1, 9);
        expect(plan.batchMass).toBeLessThanOrEqual(Math.min(usable, kit) * (1 + 1e-8));
        expect(plan.surplus).toBeLessThan(kit);
      }),
    );
  });

  it('of whole kits are the kits, and what they hold beyond the need is surplus', () => {
    const plan = batchPlan({ mass: mass.kg(9), usableMass: mass.kg(3), kitMass: mass.kg(2.5), wholeKits: true });
    expect(plan).toEqual({ batches: 4, batchMass: 2.5, kits: 4, surplus: 1, governing: 'kit' });
  });

  it('of whole kits are refused when one kit is more than can be placed', () => {
    expect(() =>
      batchPlan({ mass: mass.kg(9), usableMass: mass.kg(2), kitMass: mass.kg(2.5), wholeKits: true }),
    ).toThrow(/kitMass is 2.5 kg; must be at most the mass usable in the working time, 2 kg/);
  });

  it('that just fit need no further batch', () => {
    const plan = batchPlan({
      mass: mass.kg(0.1 * 3),
      usableMass: mass.kg(0.1),
      kitMass: mass.kg(0.1),
      wholeKits: false,
    });
    expect([plan.batches, plan.kits, plan.surplus]).toEqual([3, 3, 0]);
  });
});

describe('the usable mass', () => {
  it('is what the crew places after mixing and before the working time is over', () => {
    let placed = 0;
    for (let second = 0; second < 20 * 60; second++) if (second >= 300) placed += 0.1 / 60;
    expect(usableMass({ placingRate: massFlow.kgPerMin(0.1), workingTime: time.minute(20) })).toBeCloseTo(placed, 9);
  });

  it('is refused when mixing takes all of the working time', () => {
    expect(() => usableMass({ placingRate: massFlow.kgPerMin(0.1), workingTime: time.minute(5) })).toThrow(
      /must be below the working time, 300 s/,
    );
  });
});

describe('weighing', () => {
  it('of the least mass is off by just the tolerance', () => {
    run(
      fc.property(span(1e-5, 0.01), span(0.005, 0.2), (resolution, tolerance) => {
        const leastMass = leastWeighedMass({ resolution: resolution as Mass, tolerance: ratio.fraction(tolerance) });
        expect(weighingError({ resolution: resolution as Mass, mass: leastMass }) / tolerance).toBeCloseTo(1, 9);
      }),
    );
  });

  it('on a coarse scale is noted', () => {
    expect(weighingErrorTooLarge({ resolution: mass.g(1), mass: mass.g(39) })).toBe(true);
    expect(weighingErrorTooLarge({ resolution: mass.g(1), mass: mass.g(41) })).toBe(false);
  });
});
