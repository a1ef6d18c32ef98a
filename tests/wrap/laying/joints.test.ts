import { describe, expect, it } from 'vitest';
import type { Length } from '../../../src/quantity/index.js';
import { carryingThickness, pliesWithJoints, sheetLayers, sheetPlan } from '../../../src/wrap/index.js';
import { placeOfLayer } from '../../../src/wrap/laying/joint-offsets.js';

/** Sheet in bands: where the joints of the layers lie, what they cost, and where laying them ends. */

describe('the joints of the layers', () => {
  // The nearest to 0.382 of the places, or the next above it, that shares no divisor with them.
  it.each([
    [1, 0],
    [2, 1],
    [3, 1],
    [4, 3],
    [5, 2],
    [6, 5],
    [8, 3],
    [9, 4],
    [10, 7],
    [12, 5],
  ])('go round %s places by steps of %s', (places, step) => {
    for (let layer = 1; layer <= 2 * places; layer++) {
      expect(placeOfLayer(layer, places)).toBe(((layer - 1) * step) % places);
    }
  });

  // Bands of 1 m that lap by 0.25 m, joints 0.75 m apart.
  const of = (leastPlies: number, carryingPlies: number, reach: number) =>
    pliesWithJoints({ leastPlies, carryingPlies, sheetWidth: 1, sideLap: 0.25, reach } as never);

  it('each have a place of their own where they can, on twelve places at most', () => {
    expect(of(3, 2, 0.001)).toEqual({ plies: 3, carrying: 2, lost: 1, places: 3 });
    expect(of(4, 3, 0.001)).toEqual({ plies: 4, carrying: 3, lost: 1, places: 4 });
    expect(of(24, 0, 0.001)).toEqual({ plies: 24, carrying: 22, lost: 2, places: 12 });
  });

  it('take every layer where a joint reaches over half the distance to the next', () => {
    for (const reach of [0.375, 0.4, 1e9]) {
      expect(of(6, 0, reach)).toEqual({ plies: 6, carrying: 0, lost: 6, places: 1 });
      expect(() => of(6, 1, reach)).toThrow(
        expect.objectContaining({ parameter: 'sheetWidth', value: 1, limit: 0.25 + 2 * reach }),
      );
    }
  });

  it('are planned for a thousand plies and no more', () => {
    expect(of(1000, 0, 0.001).plies).toBe(1000);
    const tooMany = (parameter: string) => expect.objectContaining({ code: 'no-solution', parameter, limit: 1000 });
    expect(() => of(1001, 0, 0.001)).toThrow(tooMany('leastPlies'));
    expect(() => of(1, 1001, 0.001)).toThrow(tooMany('carryingPlies'));
  });

  it('leave nothing to carry where every ply ends at one', () => {
    const left = (laidThickness: number) =>
      carryingThickness({ laidThickness, lostPlies: 4, plyThickness: 0.25 } as never);
    expect(left(1.5)).toBe(0.5);
    expect(() => left(1)).toThrow(expect.objectContaining({ code: 'no-solution', limit: 1 }));
  });
});

describe('the bands of a sheet, laid out', () => {
  const sheet = { outsideDiameter: 0.3, plyThickness: 0.001, finalLap: 0.1, sideLap: 0, places: 1, stagger: 0 };
  const laid = (given: object) => sheetLayers({ ...sheet, ...given } as never);

  it('are counted from 1 in the order of laying', () => {
    const { rows } = laid({ plies: 2, axialLength: 1, sheetWidth: 0.5 });
    expect(rows.map(({ piece, layer, band }) => [piece, layer, band])).toEqual([
      [1, 1, 1],
      [2, 1, 2],
      [3, 2, 1],
      [4, 2, 2],
    ]);
  });

  it('are no wider than the sheet, however narrow it is', () => {
    const { rows } = laid({ plies: 1, axialLength: 2.05e-4, sheetWidth: 1e-4 });
    expect(rows.map(({ width }) => width)).toEqual([1e-4, 1e-4, 5e-6].map((width) => expect.closeTo(width, 12)));
  });

  it('are stepped in only as far as the innermost layer keeps some length', () => {
    const stepped = (plies: number, stagger: number) => () =>
      laid({ plies, stagger, axialLength: 1, sheetWidth: 0.5 }).rows.length;
    expect(stepped(1, 10)()).toBe(2);
    expect(stepped(3, 0.249)()).toBeGreaterThan(3);
    expect(stepped(2, 0.499)()).toBeGreaterThan(2);
    const refused = (limit: number) => expect.objectContaining({ parameter: 'stagger', limit });
    expect(stepped(3, 0.25)).toThrow(refused(0.25));
    expect(stepped(2, 0.5)).toThrow(refused(0.5));
  });

  it('are laid out up to ten thousand', () => {
    // Two layers of (L + 0.5)/0.25 bands.
    const bands = (axialLength: number) => () => laid({ plies: 2, axialLength, sheetWidth: 0.5, sideLap: 0.25 });
    expect(bands(1249.5)().rows.length).toBeGreaterThan(9990);
    expect(bands(1249.6)).toThrow(expect.objectContaining({ parameter: 'bands', limit: 10_000 }));
  });

  it('are refused where their area is no number any more', () => {
    const vast = { outsideDiameter: 1e200 as Length, sheetWidth: 1e150 as Length, axialLength: 1 as Length };
    const refused = expect.objectContaining({ parameter: 'sheetArea' });
    expect(() => laid({ ...vast, plies: 1 })).toThrow(refused);
    expect(() => sheetPlan({ ...vast, plies: 1, plyThickness: 0.001 as Length })).toThrow(refused);
  });
});
