import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Length, length } from '../../src/quantity/index.js';
import {
  finalLap,
  lengthOnRoll,
  sheetLayers,
  sheetLength,
  sheetPlan,
  sheetsSideBySide,
  tapeArea,
  wrappedArea,
} from '../../src/wrap/index.js';
import { span } from '../properties/spans.js';

const run = <T>(property: fc.IProperty<T>) => fc.assert(property, { seed: 20261125, numRuns: 300 });

describe('the bands of a sheet', () => {
  const sheet = { outsideDiameter: 0.3, plyThickness: 0.001, finalLap: 0.1, sideLap: 0, places: 1, stagger: 0 };

  it('begin with a whole one where the joints are not shifted, and each next lies over it by the lap', () => {
    const { rows } = sheetLayers({ ...sheet, plies: 1, axialLength: 2, sheetWidth: 0.5, sideLap: 0.125 } as never);
    expect(rows.map(({ begins }) => begins)).toEqual([0, 0.375, 0.75, 1.125, 1.5]);
    expect(rows.map(({ width }) => width)).toEqual([0.5, 0.5, 0.5, 0.5, 0.5]);
  });

  it('are as many as fill the length, without a sliver for the last digit', () => {
    for (let bands = 1; bands <= 60; bands++) {
      const whole = { ...sheet, plies: 1, axialLength: bands * 0.1, sheetWidth: 0.1 };
      expect(sheetLayers(whole as never).rows).toHaveLength(bands);
    }
  });

  it('leave out a first one that lies under the lap of the next', () => {
    // On the second of two places the first joint is half a pitch in; the step of the layer comes just to its lap.
    const layers = { ...sheet, plies: 2, places: 2, axialLength: 8, sheetWidth: 1, sideLap: 0.25, stagger: 0.375 };
    const [first] = sheetLayers(layers as never).rows.filter(({ layer }) => layer === 2);
    expect(first).toMatchObject({ from: -4 + 0.375, to: -4 + 1 - 0.375 + 0.75 });
  });
});

describe('a sheet wrap', () => {
  it('has the length that a roll of the same ring holds', () => {
    run(
      fc.property(span(0.06, 1.2), span(0.0002, 0.002), fc.integer({ min: 1, max: 40 }), (D, t, plies) => {
        const outsideDiameter = D as Length;
        const rollDiameter = (D + 2 * plies * t) as Length;
        const roll = lengthOnRoll({ rollDiameter, coreDiameter: outsideDiameter, sheetThickness: t as Length });
        expect(sheetLength({ outsideDiameter, plyThickness: t as Length, plies }) / roll).toBeCloseTo(1, 9);
      }),
    );
  });

  it('is the sum of circles at mid-ply', () => {
    let sum = 0;
    for (let ply = 1; ply <= 8; ply++) sum += Math.PI * (0.1683 + (2 * ply - 1) * 0.0008);
    expect(
      sheetLength({ outsideDiameter: length.mm(168.3), plyThickness: length.mm(0.8), plies: 8 }) / sum,
    ).toBeCloseTo(1, 12);
  });

  it('covers the length side by side, and one sheet fewer does not', () => {
    run(
      fc.property(span(0.05, 4), span(0.1, 1.3), span(0, 0.09), (L, w, s) => {
        const [axialLength, sheetWidth, sideLap] = [L as Length, w as Length, s as Length];
        const sheets = sheetsSideBySide({ axialLength, sheetWidth, sideLap });
        expect(w + (sheets - 1) * (w - s)).toBeGreaterThanOrEqual(L * (1 - 1e-8));
        if (sheets > 1) expect(w + (sheets - 2) * (w - s)).toBeLessThan(L);
      }),
    );
  });

  it('laps sheets by 25 mm when nothing else is said, and refuses a lap of the whole sheet', () => {
    expect(sheetsSideBySide({ axialLength: length.mm(600), sheetWidth: length.mm(300) })).toBe(3);
    expect(sheetsSideBySide({ axialLength: length.mm(600), sheetWidth: length.mm(300), sideLap: length.mm(0) })).toBe(
      2,
    );
    expect(() =>
      sheetsSideBySide({ axialLength: length.mm(600), sheetWidth: length.mm(300), sideLap: length.mm(300) }),
    ).toThrow(/below the sheet width/);
  });

  it('adds the final lap to every sheet', () => {
    const input = {
      outsideDiameter: length.mm(168.3),
      plyThickness: length.mm(0.8),
      plies: 8,
      axialLength: length.mm(600),
      sheetWidth: length.mm(300),
    };
    const plan = sheetPlan(input);
    expect(plan.lengthOfEach - sheetLength(input)).toBeCloseTo(0.15, 12);
    expect(plan.totalLength).toBeCloseTo(3 * plan.lengthOfEach, 12);
    expect(plan.sheetArea).toBeCloseTo(tapeArea({ tapeWidth: length.mm(300), tapeLength: plan.totalLength }), 12);
    expect(plan.finalDiameter).toBeCloseTo(0.1811, 12);
    expect(plan.sheetArea).toBeGreaterThan(
      8 * wrappedArea({ outsideDiameter: length.mm(168.3), axialLength: length.mm(600) }),
    );
  });

  it('laps by 150 mm or ten thicknesses, the greater', () => {
    expect(finalLap({ plyThickness: length.mm(0.8) })).toBe(0.15);
    expect(finalLap({ plyThickness: length.mm(20) })).toBeCloseTo(0.2, 12);
  });
});
