import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { circumference, outsideDiameterFromCircumference } from '../../src/pipe/index.js';
import { type Length, length, type Mass, type Ratio } from '../../src/quantity/index.js';
import { leastWeighedMass, scaleStep } from '../../src/resin/index.js';
import { finishedDiameter, tapePlan } from '../../src/wrap/index.js';

const run = <T>(property: fc.IProperty<T>) => fc.assert(property, { seed: 20261125, numRuns: 200 });
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const near = (found: number, wanted: number): void => {
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(1e-12 * Math.abs(wanted));
};

/** What a plan prints beside the parts of its design. */
describe('a number of the plan', () => {
  it('circumference: a tape without thickness reads the diameter back', () => {
    run(
      fc.property(span(0.02, 1.3), (diameter) => {
        const read = circumference({ outsideDiameter: diameter as Length });
        near(outsideDiameterFromCircumference({ circumference: read, tapeThickness: length.mm(0) }), diameter);
      }),
    );
  });

  it('step of the scale: the smallest portion is the least that such a scale weighs', () => {
    run(
      fc.property(span(0.001, 5), span(0.01, 0.2), (mass, tolerance) => {
        const resolution = scaleStep({ mass: mass as Mass, tolerance: tolerance as Ratio });
        near(leastWeighedMass({ resolution, tolerance: tolerance as Ratio }), mass);
      }),
    );
  });

  it('finished diameter: of tape it is that of its plan, of sheet twice its layers more', () => {
    run(
      fc.property(
        span(0.06, 1.2),
        span(0.0002, 0.002),
        span(0, 0.7),
        fc.integer({ min: 1, max: 20 }),
        (diameter, thickness, overlap, layers) => {
          const outsideDiameter = diameter as Length;
          const layerThickness = thickness as Length;
          const plan = tapePlan({
            outsideDiameter,
            tapeWidth: length.mm(50),
            overlap: overlap as Ratio,
            layerThickness,
            requiredLayers: layers,
            fullCountLength: length.m(1),
          });
          const { passes } = plan;
          near(
            finishedDiameter({ outsideDiameter, layers: passes, layerThickness, overlap: overlap as Ratio }),
            plan.finalDiameter,
          );
          near(finishedDiameter({ outsideDiameter, layers, layerThickness }), diameter + 2 * layers * thickness);
        },
      ),
    );
  });
});
