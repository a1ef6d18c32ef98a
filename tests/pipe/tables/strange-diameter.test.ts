import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { strangeDiameter } from '../../../src/pipe/tables/strange-diameter.js';
import { length } from '../../../src/quantity/index.js';
import { practice } from '../../../src/rules/index.js';

/** The sizes of the independent table. */
const oracle = new URL('../../../verification/oracles/pipe-sizes-fluids.json', import.meta.url);
const rows: readonly { nps: number; outside_mm: number; wall_mm: number }[] = JSON.parse(
  readFileSync(oracle, 'utf8'),
).rows;
const outsides = [...new Set(rows.map(({ outside_mm }) => outside_mm))];
const tolerance = practice.pipeSizeTolerance.value;

const strange = (mm: number, wall = 7.11) =>
  strangeDiameter({ outsideDiameter: length.mm(mm), wallThickness: length.mm(wall), tolerance });
const waysOf = (mm: number, wall?: number) => strange(mm, wall)?.slips.map(({ ways }) => ways.join()) ?? [];

describe('a strange diameter', () => {
  it('is none of either standard, nor one that a measurement puts a hundredth off', () => {
    for (const outside of outsides)
      for (const share of [0.99, 1, 1.01]) expect(strange(outside * share), `${outside * share} mm`).toBeUndefined();
  });

  it('is half of a standard one, unless that is near another size, and the radius explains it', () => {
    const isSize = (mm: number) => outsides.some((outside) => Math.abs(outside - mm) <= tolerance * outside);
    const halves = outsides.map((outside) => outside / 2).filter((half) => half > 11 && !isSize(half));
    expect(halves.length).toBeGreaterThan(20);
    for (const half of halves) expect(waysOf(half), `${half} mm`).toContain('the radius for the diameter');
  });

  it.each([
    ['DN 150 written for the outside diameter', 150, 7.11, 'the nominal size for the outside diameter', 168.3],
    ['6 in written for the outside diameter', 152.4, 7.11, 'the nominal size for the outside diameter', 168.3],
    ['the bore of NPS 8 schedule 40', 219.1 - 2 * 8.18, 8.18, 'the inside diameter for the outside diameter', 219.1],
    ['the circumference of NPS 6', 168.3 * Math.PI, 7.11, 'the circumference for the diameter', 168.3],
  ])('%s is explained', (_, mm, wall, way, meant) => {
    const slip = strange(mm, wall)?.slips.find(({ ways }) => ways.includes(way));
    expect(slip && length.inMm(slip.value as never)).toBeCloseTo(meant, 6);
  });

  it('that follows from a circumference is explained by the diameter in its place', () => {
    const given = { circumference: length.mm(168.3), wallThickness: length.mm(7.11), tolerance };
    expect(strangeDiameter(given)?.slips).toEqual([
      { value: length.mm(168.3), ways: ['the diameter for the circumference'] },
    ]);
  });

  it('names the nearest size', () => {
    expect(strange(84.15)).toMatchObject({ nps: '3', nearest: length.mm(88.9) });
  });

  it('is not looked for above the largest size of the table: larger pipe is made', () => {
    expect(strange(1422)).toBeUndefined();
  });
});
