import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Length, length } from '../../../src/quantity/index.js';
import { nearestPipeSize, type PipeSize, pipeSize, schedulesOf } from '../../../src/tables.js';

interface FluidsRow {
  readonly standard: PipeSize['standard'];
  readonly nps: number;
  readonly schedule: string;
  readonly outside_mm: number;
  readonly wall_mm: number;
}

const oracle = new URL('../../../verification/oracles/pipe-sizes-fluids.json', import.meta.url);
const fluids: readonly FluidsRow[] = JSON.parse(readFileSync(oracle, 'utf8')).rows;

describe('pipe size', () => {
  it('has every one of the 382 walls of the independent table, to the digit', () => {
    expect(fluids).toHaveLength(382);
    for (const { standard, nps, schedule, outside_mm, wall_mm } of fluids) {
      const size = pipeSize({ nps, schedule });
      expect(size.standard).toBe(standard);
      expect([size.outsideDiameter, size.wallThickness]).toEqual([length.mm(outside_mm), length.mm(wall_mm)]);
    }
  });

  it('has no wall that the independent table lacks', () => {
    const sizes = new Set(fluids.map(({ nps }) => nps));
    const count = [...sizes].reduce((sum, nps) => sum + schedulesOf({ nps }).length, 0);
    expect(count).toBe(382);
  });

  it('reads NPS as number, decimal, fraction or mixed fraction, and DN', () => {
    const expected = pipeSize({ nps: '1-1/2', schedule: 40 });
    expect(length.inMm(expected.outsideDiameter)).toBeCloseTo(48.3, 12);
    for (const nps of [1.5, '1.5', '1 1/2', 'NPS 1-1/2', '1-1/2"'])
      expect(pipeSize({ nps, schedule: 'Sch 40' })).toEqual(expected);
    expect(pipeSize({ dn: 40, schedule: '40' })).toEqual(expected);
    expect(pipeSize({ nps: '3/4', schedule: 'xs' }).dn).toBe(20);
  });

  it('keeps the printed measures of each system apart', () => {
    const [metric, inches] = [pipeSize({ nps: 2, schedule: 40 }), pipeSize({ nps: 2, schedule: 40, measures: 'inch' })];
    expect(length.inMm(metric.outsideDiameter)).toBeCloseTo(60.3, 12);
    expect(length.inMm(metric.wallThickness)).toBeCloseTo(3.91, 12);
    expect(length.inInch(inches.outsideDiameter)).toBeCloseTo(2.375, 12);
    expect(length.inInch(inches.wallThickness)).toBeCloseTo(0.154, 12);
    expect(length.inMm(metric.insideDiameter)).toBeCloseTo(52.48, 9);
  });

  it('prints in both systems the same pipe, within the rounding of the prints', () => {
    for (const { nps, schedule } of fluids) {
      const [metric, inches] = [pipeSize({ nps, schedule }), pipeSize({ nps, schedule, measures: 'inch' })];
      expect(Math.abs(metric.wallThickness - inches.wallThickness)).toBeLessThan(0.02e-3);
      expect(Math.abs(metric.outsideDiameter - inches.outsideDiameter)).toBeLessThan(0.45e-3);
    }
  });

  it('keeps the outside diameters of NPS 10 and 12 that differ between the two standards', () => {
    expect(length.inMm(pipeSize({ nps: 10, schedule: 'STD' }).outsideDiameter)).toBeCloseTo(273.0, 12);
    expect(length.inMm(pipeSize({ nps: 10, schedule: '40S' }).outsideDiameter)).toBeCloseTo(273.1, 12);
    expect(length.inMm(pipeSize({ nps: 12, schedule: 'STD' }).outsideDiameter)).toBeCloseTo(323.8, 12);
    expect(length.inMm(pipeSize({ nps: 12, schedule: '40S' }).outsideDiameter)).toBeCloseTo(323.9, 12);
  });

  it('has 3.96 mm, not the mistyped 0.165 in, for NPS 12 schedule 5', () => {
    expect(length.inMm(pipeSize({ nps: 12, schedule: 5 }).wallThickness)).toBeCloseTo(3.96, 12);
    expect(length.inInch(pipeSize({ nps: 12, schedule: 5, measures: 'inch' }).wallThickness)).toBeCloseTo(0.156, 12);
    expect(length.inMm(pipeSize({ nps: 28, schedule: 10 }).wallThickness)).toBeCloseTo(7.92, 12);
  });

  it('names the schedules of a size, or the nearest sizes, when a pair is not in the table', () => {
    expect(() => pipeSize({ nps: 6, schedule: 60 })).toThrow(
      /schedule is 60; NPS 6 of ASME B36.10M has 5 \(2.77 mm\), .*40 \(7.11 mm\), STD \(7.11 mm\)/,
    );
    expect(() => pipeSize({ nps: 7, schedule: 40 })).toThrow('nps is 7; must be one of NPS 5, 6, 8, 10');
    expect(() => pipeSize({ dn: 160, schedule: 40 })).toThrow('dn is 160; must be one of DN 125, 150, 200, 250');
    expect(() => pipeSize({ nps: 'six', schedule: 40 })).toThrow('must be one of NPS 1/8, 1/4');
    expect(() => pipeSize({ nps: Number.NaN, schedule: 40 })).toThrow('must be one of NPS 1/8, 1/4');
    expect(() => pipeSize({ nps: 6, schedule: '40S', standard: 'ASME B36.10M' })).toThrow('of ASME B36.10M has');
    expect(() => pipeSize({ nps: 6, schedule: 'toString' })).toThrow('NPS 6 of ASME B36.10M has');
    expect(() => pipeSize({ nps: 6, schedule: 40, standard: 'DIN' as PipeSize['standard'] })).toThrow(
      'standard is DIN',
    );
  });
});

describe('nearest pipe size', () => {
  it('of a standard diameter is that size, with no difference', () => {
    for (const { nps, schedule, outside_mm } of fluids.filter(({ standard }) => standard === 'ASME B36.10M')) {
      const nearest = nearestPipeSize(length.mm(outside_mm));
      expect(nearest.nps).toBe(pipeSize({ nps, schedule }).nps);
      expect(nearest.difference).toBe(0);
    }
  });

  it('states how far the measured diameter is from it, and which size comes next', () => {
    const nearest = nearestPipeSize(length.mm(170));
    expect([nearest.nps, nearest.dn, nearest.next.nps]).toEqual(['6', 150, '5']);
    expect(length.inMm(nearest.difference)).toBeCloseTo(1.7, 9);
    expect(nearest.relativeDifference).toBeCloseTo(1.7 / 168.3, 9);
    expect(length.inMm(nearestPipeSize(length.mm(5000)).difference)).toBeCloseTo(5000 - 1219, 6);
  });

  it('has no size of its standard nearer than the one returned', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.005, max: 1.5, noNaN: true }), (D) => {
        const nearest = nearestPipeSize(D as Length);
        expect(nearest.difference).toBeCloseTo(D - nearest.outsideDiameter, 12);
        for (const { standard, outside_mm } of fluids)
          if (standard === 'ASME B36.10M')
            expect(Math.abs(nearest.difference)).toBeLessThanOrEqual(Math.abs(D - length.mm(outside_mm)));
        expect(Math.abs(nearest.next.difference)).toBeGreaterThanOrEqual(Math.abs(nearest.difference));
      }),
      { seed: 20261125, numRuns: 100 },
    );
  });

  it('refuses what is no diameter', () => {
    for (const bad of [0, -0.1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => nearestPipeSize(bad as Length)).toThrow('outsideDiameter');
    expect(() => nearestPipeSize(length.mm(100), 'EN' as PipeSize['standard'])).toThrow(
      'standard is EN; must be ASME B36.10M or',
    );
  });
});
