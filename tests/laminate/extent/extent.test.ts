import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  axialExtent,
  governingOverlap,
  governingThickness,
  laminateBoreRatio,
  laminateBoreRatioBeyondTwelfth,
  overlapFromAdhesive,
  overlapFromGeometry,
  overlapFromHole,
  plyCount,
  taperLength,
  thinLaminateLimit,
  thinLaminateLimitExceeded,
} from '../../../src/laminate/index.js';
import { type Length, length, type Modulus, type Strain, type Stress } from '../../../src/quantity/index.js';
import { near, rising, seeded, span } from '../../properties/spans.js';

describe('the overlap', () => {
  it('from geometry by default is the longer of the two recalled forms', () => {
    fc.assert(
      fc.property(span<Length>(0.05, 1.2), span<Length>(0.001, 0.02), (outsideDiameter, wallThickness) => {
        const pipe = { outsideDiameter, wallThickness };
        const [iso, pcc] = [overlapFromGeometry(pipe), overlapFromGeometry({ ...pipe, coefficient: 2.5, divisor: 2 })];
        near(pcc / iso, 2.5 / Math.sqrt(8), 1e-14);
        expect(iso).toBeGreaterThan(pcc);
      }),
      seeded,
    );
  });

  it('round a small hole meets that of the geometry at its limit, and is refused there', () => {
    fc.assert(
      fc.property(
        span<Length>(0.05, 1.2),
        span<Length>(0.001, 0.02),
        span(0.01, 0.999),
        (outsideDiameter, wallThickness, part) => {
          const pipe = { outsideDiameter, wallThickness };
          const limit = 0.5 * Math.sqrt(outsideDiameter * wallThickness);
          const holeDiameter = (part * limit) as Length;
          near(overlapFromHole({ ...pipe, holeDiameter }) / overlapFromGeometry(pipe), part, 1e-12);
          expect(() => overlapFromHole({ ...pipe, holeDiameter: (limit * 1.0001) as Length })).toThrow('larger hole');
        },
      ),
      seeded,
    );
  });

  it('from the adhesive passes the force of the laminate into the pipe at a third of its strength', () => {
    const laminate = {
      axialModulus: 23.4e9 as Modulus,
      axialStrain: 0.0025 as Strain,
      laminateThickness: length.mm(6),
      lapShearStrength: 5e6 as Stress,
    };
    const force = 23.4e9 * 0.0025 * 0.006;
    near(overlapFromAdhesive(laminate) * (5e6 / 3), force, 1e-14);
    near(overlapFromAdhesive({ ...laminate, factor: 1 }) * 5e6, force, 1e-14);
  });

  it('that governs is the longest, by its name', () => {
    fc.assert(
      fc.property(span<Length>(0.001, 0.4), span<Length>(0, 0.4), span<Length>(0, 0.4), (geometry, adhesive, hole) => {
        const { overlap, governing } = governingOverlap({ geometry, adhesive, hole });
        const all = { geometry, minimum: length.mm(50), adhesive, hole };
        expect(overlap).toBe(Object.values(all).sort((a, b) => b - a)[0]);
        expect(all[governing]).toBe(overlap);
      }),
      seeded,
    );
    expect(governingOverlap({ geometry: length.mm(50), adhesive: length.mm(50) }).governing).toBe('geometry');
  });

  it('adds up with the defect and the tapers, and no taper is steeper than 5 to 1', () => {
    near(
      axialExtent({
        overlap: length.mm(70),
        defectLength: length.mm(100),
        taperLength: taperLength({ laminateThickness: length.mm(6) }),
      }),
      length.mm(300),
      1e-14,
    );
    expect(() => taperLength({ laminateThickness: length.mm(6), ratio: 4.9 })).toThrow('must be at least 5');
    near(taperLength({ laminateThickness: length.mm(6), ratio: 10 }), length.mm(60), 1e-14);
  });
});

describe('the thickness that governs', () => {
  it('is the largest, by its name, and the leak counts only when it is given', () => {
    fc.assert(
      fc.property(span<Length>(0, 0.03), span<Length>(0, 0.03), span<Length>(0, 0.03), (hoop, axial, leak) => {
        const all = { hoop, axial, leak };
        const found = governingThickness(all);
        expect(found.thickness).toBe(Math.max(hoop, axial, leak));
        expect(all[found.governing]).toBe(found.thickness);
        expect(governingThickness({ hoop, axial }).governing).toBe(hoop >= axial ? 'hoop' : 'axial');
      }),
      seeded,
    );
  });
});

describe('the number of plies', () => {
  it('reaches the thickness, with one ply fewer it would not, and is never below two', () => {
    fc.assert(
      fc.property(span<Length>(0, 0.05), span<Length>(3e-4, 3e-3), (requiredThickness, plyThickness) => {
        const { plies, thickness } = plyCount({ requiredThickness, plyThickness });
        expect(thickness).toBeGreaterThanOrEqual(requiredThickness * (1 - 1e-9));
        expect(plies).toBeGreaterThanOrEqual(2);
        if (plies > 2) expect((plies - 1) * plyThickness).toBeLessThan(requiredThickness);
        near(thickness, plies * plyThickness, 1e-15);
      }),
      seeded,
    );
  });

  it('is not raised by the rounding of a quotient: n plies of any thickness are n plies', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 60 }), span<Length>(3e-4, 3e-3), (n, plyThickness) => {
        let requiredThickness = 0;
        for (let i = 0; i < n; i++) requiredThickness += plyThickness;
        expect(plyCount({ requiredThickness: requiredThickness as Length, plyThickness }).plies).toBe(n);
      }),
      seeded,
    );
  });

  it('never falls with the thickness', () => {
    fc.assert(
      fc.property(rising<Length>(0, 0.05), span<Length>(3e-4, 3e-3), ([thin, thick], plyThickness) => {
        expect(plyCount({ requiredThickness: thick, plyThickness }).plies).toBeGreaterThanOrEqual(
          plyCount({ requiredThickness: thin, plyThickness }).plies,
        );
      }),
      seeded,
    );
  });
});

describe('the thin laminate', () => {
  it('ends at a twelfth of the diameter, where the bore carries 9 % more than the mean', () => {
    const outsideDiameter = length.mm(200);
    const limit = thinLaminateLimit({ outsideDiameter });
    near(limit, length.mm(200) / 12, 1e-15);
    expect(thinLaminateLimitExceeded({ outsideDiameter, laminateThickness: limit })).toBe(true);
    expect(thinLaminateLimitExceeded({ outsideDiameter, laminateThickness: (limit * 0.999) as Length })).toBe(false);
    expect(
      thinLaminateLimitExceeded({ outsideDiameter, laminateThickness: (limit * 0.999) as Length, ratio: 13 }),
    ).toBe(true);
    expect(laminateBoreRatioBeyondTwelfth({ outsideDiameter, laminateThickness: limit })).toBe(true);
    expect(laminateBoreRatio({ outsideDiameter, laminateThickness: limit })).toBeGreaterThan(1.08);
  });

  it('carries the mean stress alone when it is thin, and more at its bore the thicker it is', () => {
    fc.assert(
      fc.property(rising<Length>(1e-6, 0.5), span<Length>(0.02, 1.2), ([thin, thick], outsideDiameter) => {
        const at = (laminateThickness: number) =>
          laminateBoreRatio({ outsideDiameter, laminateThickness: laminateThickness as Length });
        expect(at(thick)).toBeGreaterThanOrEqual(at(thin) * (1 - 1e-15));
        near(at(outsideDiameter * 1e-9), 1, 1e-8);
      }),
      seeded,
    );
  });
});
