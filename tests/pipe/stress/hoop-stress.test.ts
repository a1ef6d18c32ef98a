import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  boreHoopStress,
  hoopStress,
  insideDiameterHoopStress,
  meanDiameterHoopStress,
  meanDiameterHoopStressBeyondAccuracy,
  outsideHoopStress,
  thickWallAxialStress,
  thickWallHoopStress,
  thickWallRadialStress,
} from '../../../src/pipe/index.js';
import { gauge, type Length, length } from '../../../src/quantity/index.js';
import { span as real } from '../../properties/spans.js';
import { pipes, runs } from '../pipes.js';

const insideOf = (pipe: { outsideDiameter: Length; wallThickness: Length }) =>
  (pipe.outsideDiameter - 2 * pipe.wallThickness) as Length;

describe('hoop stress', () => {
  it('on the outside diameter is never below the bore value of the thick cylinder', () => {
    fc.assert(
      fc.property(pipes(0.0005, 0.4999), (pipe) => {
        expect(hoopStress(pipe)).toBeGreaterThanOrEqual(boreHoopStress(pipe) * (1 - 1e-12));
      }),
      runs,
    );
  });

  it('falls from the bore value by way of the mean diameter to the wall average on the inside diameter', () => {
    fc.assert(
      fc.property(pipes(0.005, 0.49), (pipe) => {
        const mean = meanDiameterHoopStress(pipe);
        const inside = insideDiameterHoopStress({ ...pipe, insideDiameter: insideOf(pipe) });
        expect(boreHoopStress(pipe)).toBeGreaterThan(mean);
        expect(mean).toBeGreaterThan(inside);
        expect(inside).toBeGreaterThan(outsideHoopStress(pipe));
      }),
      runs,
    );
  });

  it('on the mean diameter stays within 1 % of the bore value exactly where no note is raised', () => {
    fc.assert(
      fc.property(pipes(0.001, 0.4), (pipe) => {
        const short = 1 - meanDiameterHoopStress(pipe) / boreHoopStress(pipe);
        if (meanDiameterHoopStressBeyondAccuracy(pipe)) expect(short).toBeGreaterThan(0.0099);
        else expect(short).toBeLessThan(0.01);
      }),
      runs,
    );
  });

  it('at the outside of a thick wall is the bore value less the pressure', () => {
    fc.assert(
      fc.property(pipes(0.001, 0.49), (pipe) => {
        const expected = boreHoopStress(pipe) - pipe.pressure;
        expect(Math.abs(outsideHoopStress(pipe) - expected)).toBeLessThan(1e-12 * boreHoopStress(pipe));
      }),
      runs,
    );
  });

  it('at any radius meets the bore and the outside forms, and with the radial stress twice the closed-end axial one', () => {
    fc.assert(
      fc.property(pipes(0.01, 0.45), real(0, 1), (pipe, share) => {
        const [ri, ro] = [pipe.outsideDiameter / 2 - pipe.wallThickness, pipe.outsideDiameter / 2];
        const at = (radius: number) => ({ ...pipe, radius: radius as Length });
        expect(thickWallHoopStress(at(ri)) / boreHoopStress(pipe)).toBeCloseTo(1, 10);
        expect(thickWallHoopStress(at(ro)) / outsideHoopStress(pipe)).toBeCloseTo(1, 10);
        const radius = at(Math.min(ro, ri + (ro - ri) * share));
        const sum = thickWallHoopStress(radius) + thickWallRadialStress(radius);
        expect(sum / (2 * thickWallAxialStress({ ...pipe, ends: 'closed' }))).toBeCloseTo(1, 9);
      }),
      runs,
    );
  });

  it('of a thin wall is the same by every form', () => {
    const pipe = { pressure: gauge.MPa(1), outsideDiameter: length.mm(1000), wallThickness: length.mm(0.001) };
    const expected = 1e6 * 5e5;
    expect(hoopStress(pipe) / expected).toBeCloseTo(1, 12);
    expect(meanDiameterHoopStress(pipe) / expected).toBeCloseTo(1, 5);
    expect(boreHoopStress(pipe) / expected).toBeCloseTo(1, 5);
    expect(outsideHoopStress(pipe) / expected).toBeCloseTo(1, 5);
  });

  it('has a note on the mean diameter from D/t = 11 downward', () => {
    const pipe = { pressure: gauge.MPa(1), outsideDiameter: length.mm(110) };
    expect(meanDiameterHoopStressBeyondAccuracy({ ...pipe, wallThickness: length.mm(9.99) })).toBe(false);
    expect(meanDiameterHoopStressBeyondAccuracy({ ...pipe, wallThickness: length.mm(10.01) })).toBe(true);
  });
});
