import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Length } from '../../src/quantity/index.js';
import { pliesWithJoints, type SheetPiece, sheetLayers } from '../../src/wrap/index.js';

const run = <T>(property: fc.IProperty<T>, numRuns = 150) => fc.assert(property, { seed: 20261125, numRuns });
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const wraps = fc
  .record({
    plies: fc.integer({ min: 2, max: 12 }),
    needed: fc.integer({ min: 1, max: 5 }),
    width: span(0.12, 0.6),
    lap: span(0, 0.03),
    reach: span(0.01, 0.03),
    axial: span(0.3, 1.2),
    step: span(0, 0.002),
  })
  // So wide that at least a third of the plies can go through.
  .filter(({ width, lap, reach }) => width - lap > 3.2 * reach);

type Wrap = typeof wraps extends fc.Arbitrary<infer T> ? T : never;

function laidOf(wrap: Wrap) {
  const counted = pliesWithJoints({
    leastPlies: wrap.plies,
    carryingPlies: wrap.needed,
    sheetWidth: wrap.width as Length,
    sideLap: wrap.lap as Length,
    reach: wrap.reach as Length,
  });
  const laid = sheetLayers({
    outsideDiameter: 0.2 as Length,
    plyThickness: 0.001 as Length,
    plies: counted.plies,
    axialLength: wrap.axial as Length,
    sheetWidth: wrap.width as Length,
    sideLap: wrap.lap as Length,
    finalLap: 0.15 as Length,
    places: counted.places,
    stagger: wrap.step as Length,
  });
  return { counted, laid };
}

/** Whether a layer is whole at x: some band of it lies there with the reach to both of its edges that are joints. */
function isWhole(layer: readonly SheetPiece[], x: number, reach: number): boolean {
  return layer.some(({ from, to }, index) => {
    const startsAfter = index === 0 ? from : from + reach;
    const endsBefore = index === layer.length - 1 ? to : to - reach;
    return x >= startsAfter - 1e-12 && x <= endsBefore + 1e-12;
  });
}

describe('sheet in bands', () => {
  it("carries 'wrap/plies-with-joints' along the pipe at every place, walked millimetre by millimetre", () => {
    run(
      fc.property(wraps, (wrap) => {
        const { counted, laid } = laidOf(wrap);
        const layers = Array.from({ length: counted.plies }, (_, k) =>
          laid.rows.filter(({ layer }) => layer === k + 1),
        );
        const middle = wrap.axial / 2 - counted.plies * wrap.step;
        for (let x = -middle; x <= middle; x += 0.001) {
          const whole = layers.filter((layer) => isWhole(layer, x, wrap.reach)).length;
          expect(whole).toBeGreaterThanOrEqual(counted.carrying);
        }
        expect(counted.carrying).toBeGreaterThanOrEqual(wrap.needed);
        expect(counted.carrying + counted.lost).toBe(counted.plies);
      }),
      60,
    );
  });

  it("is not asked by 'wrap/plies-with-joints' for more plies than joints near one place take, in an endless row", () => {
    run(
      fc.property(wraps, (wrap) => {
        const { counted, laid } = laidOf({ ...wrap, axial: 6, step: 0 });
        const joints = laid.rows.flatMap(({ layer, to }) =>
          laid.rows.some((other) => other.layer === layer && other.to > to) ? [{ layer, to: to as number }] : [],
        );
        let most = 0;
        for (const { to: left } of joints) {
          const near = joints.filter(({ to }) => to >= left - 1e-9 && to <= left + 2 * wrap.reach - 1e-9);
          most = Math.max(most, new Set(near.map(({ layer }) => layer)).size);
        }
        expect(most).toBe(counted.lost);
      }),
      60,
    );
  });

  it("covers every place of every layer in 'wrap/sheet-layers', no band wider than the sheet, each lapping the next", () => {
    run(
      fc.property(wraps, (wrap) => {
        const { counted, laid } = laidOf(wrap);
        let sum = 0;
        for (let k = 1; k <= counted.plies; k++) {
          const layer = laid.rows.filter(({ layer: each }) => each === k);
          expect(layer[0]?.from).toBeCloseTo(-wrap.axial / 2 + (k - 1) * wrap.step, 9);
          expect(layer.at(-1)?.to).toBeCloseTo(wrap.axial / 2 - (k - 1) * wrap.step, 9);
          for (const [index, { from, to, width, begins, sheetLength }] of layer.entries()) {
            expect(width).toBeLessThanOrEqual(wrap.width * (1 + 1e-9));
            expect(width).toBeGreaterThan(0);
            expect(begins).toBeCloseTo(from + wrap.axial / 2, 12);
            expect(sheetLength).toBeCloseTo(Math.PI * (0.2 + 0.001 * (2 * k - 1)) + 0.15, 12);
            const next = layer[index + 1];
            if (next !== undefined) expect(to - next.from).toBeCloseTo(wrap.lap, 9);
            sum += sheetLength;
          }
          expect(laid.bands).toBeGreaterThanOrEqual(layer.length);
        }
        expect(laid.totalLength).toBeCloseTo(sum, 9);
        expect(laid.sheetArea).toBeCloseTo(sum * wrap.width, 9);
      }),
      60,
    );
  });
});
