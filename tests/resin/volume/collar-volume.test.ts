import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { density, type Length, length, ratio, type Volume } from '../../../src/quantity/index.js';
import { collarVolume, defectVolume, mass, massWithWaste, volumeWithWaste } from '../../../src/resin/index.js';
import { span } from '../../properties/spans.js';

const run = <T>(property: fc.IProperty<T>) => fc.assert(property, { seed: 20261125, numRuns: 300 });

describe('a filler collar', () => {
  it('is the ring between two cylinders', () => {
    run(
      fc.property(span(0.06, 1.2), span(0.001, 0.02), span(0.05, 2), (D, t, L) => {
        const V = collarVolume({ outsideDiameter: D as Length, thickness: t as Length, axialLength: L as Length });
        expect(V / ((Math.PI / 4) * ((D + 2 * t) ** 2 - D ** 2) * L)).toBeCloseTo(1, 9);
      }),
    );
  });

  const collar = { outsideDiameter: length.mm(168.3), thickness: length.mm(3), axialLength: length.mm(300) };

  it('takes the thicker zone only for what it adds, and the defect in full', () => {
    const bare = collarVolume(collar);
    const patch = { patchLength: length.mm(80), patchWidth: length.mm(60), patchThickness: length.mm(8) };
    expect(collarVolume({ ...collar, ...patch }) - bare).toBeCloseTo(0.08 * 0.06 * 0.005, 12);
    expect(collarVolume({ ...collar, ...patch, patchThickness: length.mm(3) })).toBeCloseTo(bare, 12);
    expect(collarVolume({ ...collar, defectVolume: 1e-5 as Volume }) - bare).toBeCloseTo(1e-5, 12);
  });

  it('refuses a zone that is larger than the collar or thinner than it', () => {
    const patch = { patchLength: length.mm(80), patchWidth: length.mm(60), patchThickness: length.mm(8) };
    expect(() => collarVolume({ ...collar, ...patch, patchLength: length.mm(301) })).toThrow(
      /at most the length of the collar/,
    );
    expect(() => collarVolume({ ...collar, ...patch, patchWidth: length.mm(529) })).toThrow(
      /at most the circumference/,
    );
    expect(() => collarVolume({ ...collar, ...patch, patchThickness: length.mm(2) })).toThrow(
      /at least the thickness of the collar/,
    );
    expect(() => collarVolume({ ...collar, thickness: length.mm(0) })).toThrow(/collarVolume is 0 m3/);
  });

  it('weighs its density, with waste on top', () => {
    const volume = collarVolume(collar);
    const fillerDensity = density.kgPerM3(1600);
    const waste = ratio.percent(20);
    expect(massWithWaste({ volume, density: fillerDensity, waste })).toBeCloseTo(
      1.2 * mass({ volume, density: fillerDensity }),
      12,
    );
    expect(mass({ volume: volumeWithWaste({ volume, waste }), density: fillerDensity })).toBeCloseTo(
      massWithWaste({ volume, density: fillerDensity, waste }),
      12,
    );
  });
});

describe('the volume of a defect', () => {
  it('as a bowl is that of half an ellipsoid, added up slice by slice', () => {
    let sum = 0;
    const n = 4000;
    // Slices at depth z are ellipses of the size sqrt(1 - z^2) of the mouth.
    for (let i = 0; i < n; i++) sum += (Math.PI / 4) * 0.04 * 0.03 * (1 - ((i + 0.5) / n) ** 2) * (0.004 / n);
    const pit = { length: length.mm(40), width: length.mm(30), depth: length.mm(4) };
    expect(defectVolume({ ...pit, shape: 'bowl' }) / sum).toBeCloseTo(1, 6);
    expect(defectVolume({ ...pit, shape: 'flat-bottomed' })).toBeCloseTo(0.04 * 0.03 * 0.004, 12);
  });

  it('refuses a shape that it does not know', () => {
    expect(() =>
      defectVolume({ length: length.mm(1), width: length.mm(1), depth: length.mm(1), shape: 'cone' as 'bowl' }),
    ).toThrow(/one of flat-bottomed, bowl/);
  });
});
