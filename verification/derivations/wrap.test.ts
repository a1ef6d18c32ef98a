import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { length, type Ratio, ratio } from '../../src/quantity/index.js';
import {
  advancePerTurn,
  axialTapeWidth,
  leadAngle,
  lengthPerTurn,
  maximumLayers,
  minimumLayers,
  passes,
  sheetLength,
  tapePlan,
} from '../../src/wrap/index.js';
import { lengthByArea, lengthBySpiral } from './sheet-spiral.js';
import { layersAt, layersBetween, unrolled } from './tape-coverage.js';

const run = <T>(property: fc.IProperty<T>, numRuns = 300) => fc.assert(property, { seed: 20261125, numRuns });
const overlaps = fc.double({ min: 0, max: 0.8, noNaN: true });
/** Overlaps whose mean count is far enough from a whole number for the thinner stripe to be seen by the count. */
const clearOverlaps = overlaps.filter((o) => Math.abs(((1 / (1 - o)) % 1) - 0.5) < 0.49);

describe('layers under an overlapped tape, counted by brute force', () => {
  it.each([0, 0.3, 0.45, 0.49, 0.5, 0.51, 0.55, 0.6, 2 / 3, 0.7, 0.75])('agree at an overlap of %s', (overlap) => {
    const winding = { width: 100, overlap, diameter: 169.1, overallLength: 900, closingTurns: false };
    const { axialWidth } = unrolled(winding);
    const counted = layersBetween(winding, axialWidth, 900 - axialWidth);
    expect(minimumLayers({ overlap: ratio.fraction(overlap) })).toBe(counted.least);
    expect(maximumLayers({ overlap: ratio.fraction(overlap) })).toBe(counted.greatest);
  });

  it('agree for any overlap', () => {
    run(
      fc.property(clearOverlaps, fc.double({ min: 80, max: 600, noNaN: true }), (overlap, diameter) => {
        const winding = { width: 100, overlap, diameter, overallLength: 700, closingTurns: false };
        const { axialWidth } = unrolled(winding);
        const counted = layersBetween(winding, axialWidth, 700 - axialWidth, 300);
        expect(minimumLayers({ overlap: overlap as Ratio })).toBe(counted.least);
        expect(maximumLayers({ overlap: overlap as Ratio })).toBe(counted.greatest);
      }),
      40,
    );
  });

  it('leave bare metal at the ends unless each end is closed by a hoop turn', () => {
    const open = { width: 100, overlap: 0.5, diameter: 169.1, overallLength: 800, closingTurns: false };
    expect(layersBetween(open, 10, 10.001).least).toBe(0);
    expect(layersBetween(open, 789.999, 790).least).toBe(0);
    expect(layersBetween({ ...open, closingTurns: true }, 0, 100).least).toBeGreaterThanOrEqual(1);
    expect(layersAt({ ...open, closingTurns: true }, 790, 0.9)).toBeGreaterThanOrEqual(1);
  });
});

describe('the helix against the triangle that one turn unrolls to', () => {
  it('has the angle, advance, width and length of that triangle', () => {
    run(
      fc.property(overlaps, fc.double({ min: 60, max: 1200, noNaN: true }), (overlap, diameter) => {
        const input = { tapeWidth: length.mm(100), overlap: overlap as Ratio, meanDiameter: length.mm(diameter) };
        const triangle = unrolled({ width: 0.1, overlap, diameter: diameter / 1000 });
        expect(leadAngle(input)).toBeCloseTo(triangle.angle, 12);
        expect(advancePerTurn(input)).toBeCloseTo(triangle.pitch, 12);
        expect(axialTapeWidth(input)).toBeCloseTo(triangle.axialWidth, 12);
        expect(lengthPerTurn(input) / triangle.turn).toBeCloseTo(1, 12);
      }),
    );
  });
});

describe("the plan 'wrap/tape-plan'", () => {
  const input = {
    outsideDiameter: length.mm(168.3),
    tapeWidth: length.mm(100),
    overlap: ratio.fraction(0.5),
    layerThickness: length.mm(0.8),
    requiredLayers: 8,
    fullCountLength: length.mm(600),
  };

  it('has the rows that were worked out pass by pass elsewhere', () => {
    const printed = [
      [1, 169.9, 50.221, 13.947, 8544.9],
      [2, 173.1, 50.213, 13.95, 8706.0],
      [3, 176.3, 50.205, 13.952, 8867.1],
      [4, 179.5, 50.198, 13.955, 9028.3],
    ];
    const rows = tapePlan(input).rows.map(({ pass, meanDiameter, advance, turns, tapeLength }) => [
      pass,
      Number(length.inMm(meanDiameter).toFixed(1)),
      Number(length.inMm(advance).toFixed(3)),
      Number(turns.toFixed(3)),
      Number(length.inMm(tapeLength).toFixed(1)),
    ]);
    expect(rows).toEqual(printed);
  });

  it('takes the tape that covers its area, pass by pass, for any wrap', () => {
    run(
      fc.property(
        fc.double({ min: 0, max: 0.8, noNaN: true }),
        fc.double({ min: 60, max: 1200, noNaN: true }),
        fc.double({ min: 25, max: 150, noNaN: true }),
        fc.integer({ min: 1, max: 20 }),
        (overlap, diameter, width, requiredLayers) => {
          const plan = tapePlan({
            outsideDiameter: length.mm(diameter),
            tapeWidth: length.mm(width),
            overlap: overlap as Ratio,
            layerThickness: length.mm(0.8),
            requiredLayers,
            fullCountLength: length.mm(500),
          });
          const first = unrolled({ width, overlap, diameter: diameter + 0.8 });
          const overall = 500 + 2 * first.axialWidth;
          let tape = 0;
          let surface = diameter;
          for (let pass = 0; pass < plan.passes; pass++) {
            const built = (0.8 * 2) / (1 - overlap);
            const middle = surface + built / 2;
            const { axialWidth } = unrolled({ width, overlap, diameter: middle });
            // Layers times area: the helix covers (overall - axial width) in the mean 1/(1 - o) times, and two hoop turns.
            const area = (Math.PI * middle * (overall - axialWidth)) / (1 - overlap) + 2 * Math.PI * middle * width;
            tape += area / width;
            surface += built;
          }
          expect(length.inMm(plan.tapeLength) / tape).toBeCloseTo(1, 9);
          expect(length.inMm(plan.overallLength) / overall).toBeCloseTo(1, 9);
          expect(length.inMm(plan.finalDiameter) / surface).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  it('leaves at least the required layers over the full-count length, counted point by point', () => {
    const plan = tapePlan({ ...input, overlap: ratio.fraction(0.55), requiredLayers: 5 });
    const overallLength = length.inMm(plan.overallLength);
    const edge = (overallLength - 600) / 2;
    for (let i = 0; i < 300; i++) {
      for (const part of [0.05, 0.33, 0.61, 0.97]) {
        const x = edge + (600 * (i + 0.5)) / 300;
        let layers = 0;
        for (const { meanDiameter } of plan.rows) {
          const diameter = length.inMm(meanDiameter);
          layers += layersAt({ width: 100, overlap: 0.55, diameter, overallLength, closingTurns: true }, x, part);
        }
        expect(layers).toBeGreaterThanOrEqual(5);
      }
    }
    expect(plan.passes).toBe(3);
    expect(plan.layers).toBe(6);
  });

  it('needs as many passes as are laid one after another until the layers are there', () => {
    run(
      fc.property(clearOverlaps, fc.integer({ min: 1, max: 24 }), (overlap, requiredLayers) => {
        const winding = { width: 100, overlap, diameter: 300, overallLength: 500, closingTurns: false };
        const { axialWidth } = unrolled(winding);
        const { least } = layersBetween(winding, axialWidth, 500 - axialWidth, 300);
        let laid = 0;
        for (let layers = 0; layers < requiredLayers; layers += least) laid++;
        expect(passes({ requiredLayers, overlap: overlap as Ratio })).toBe(laid);
      }),
      40,
    );
  });
});

describe('a sheet wound on a pipe', () => {
  const pipes = fc.record({
    diameter: fc.double({ min: 60, max: 1200, noNaN: true }),
    thickness: fc.double({ min: 0.2, max: 2, noNaN: true }),
    plies: fc.integer({ min: 1, max: 40 }),
  });
  const sheetRun = ({ diameter, thickness, plies }: { diameter: number; thickness: number; plies: number }) =>
    length.inMm(sheetLength({ outsideDiameter: length.mm(diameter), plyThickness: length.mm(thickness), plies }));

  it('has the area of the ring it fills', () => {
    run(
      fc.property(pipes, (pipe) => {
        expect(sheetRun(pipe) / lengthByArea(pipe.diameter, pipe.thickness, pipe.plies)).toBeCloseTo(1, 9);
      }),
    );
  });

  it('is shorter than the Archimedean spiral by (b/2) ln(r2/r1), which is nothing', () => {
    run(
      fc.property(pipes, (pipe) => {
        const { diameter, thickness, plies } = pipe;
        const rise = thickness / (2 * Math.PI);
        const excess = (rise / 2) * Math.log((diameter / 2 + plies * thickness) / (diameter / 2));
        const spiral = lengthBySpiral(diameter, thickness, plies);
        // The next term of the series, of the order of (b/r)^4, is below 1e-9 on the smallest pipe.
        expect((spiral - excess) / sheetRun(pipe)).toBeCloseTo(1, 8);
        expect(excess / spiral).toBeLessThan(1e-4);
      }),
      100,
    );
  });
});
