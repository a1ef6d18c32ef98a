import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  gapAtEndOfLife,
  joinedExtent,
  neighbourReach,
  neighbourSpacingAlong,
  neighbourSpacingRound,
} from '../../../src/pipe/index.js';
import { corrosionRate, length, time } from '../../../src/quantity/index.js';

const millimetres = (least: number, most: number) =>
  fc.double({ min: least, max: most, noNaN: true }).map((value) => length.mm(value));
const pipes = fc
  .record({ outsideDiameter: millimetres(20, 1500), share: fc.double({ min: 0.005, max: 0.4, noNaN: true }) })
  .map(({ outsideDiameter, share }) => ({ outsideDiameter, wallThickness: length.m(outsideDiameter * share) }));

describe('the gap up to which two losses act as one', () => {
  it('is longer round the pipe than along it', () => {
    fc.assert(
      fc.property(pipes, (pipe) => neighbourSpacingRound(pipe) > neighbourSpacingAlong(pipe)),
      { seed: 20261125, numRuns: 200 },
    );
  });

  it('is never less than the three walls of the other rule that is recalled', () => {
    fc.assert(
      fc.property(pipes, (pipe) => neighbourSpacingAlong(pipe) >= 3 * pipe.wallThickness * (1 - 1e-12)),
      { seed: 20261125, numRuns: 200 },
    );
  });
});

describe('losses that act as one', () => {
  it('that reach to opposite sides span both gaps and both extents', () => {
    const one = neighbourReach({ gap: length.mm(60), extent: length.mm(30) });
    const other = neighbourReach({ gap: length.mm(20), extent: length.mm(20) });
    expect(joinedExtent({ extent: length.mm(120), farthest: one, second: other })).toBeCloseTo(length.mm(250), 12);
  });

  it('meet once both have grown over the gap, and no gap is ever less than none', () => {
    const gap = (years: number) =>
      gapAtEndOfLife({ gap: length.mm(15), rate: corrosionRate.mmPerYear(0.5), life: time.year(years) });
    expect([gap(0), gap(15), gap(20)]).toEqual([length.mm(15), 0, 0]);
  });
});
