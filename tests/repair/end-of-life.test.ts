import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { corrosionRate, length, temperature, time } from '../../src/quantity/index.js';
import { type Defect, designRepair, endOfLife, planWork, type RepairCase } from '../../src/repair/index.js';
import { calculationSheet } from '../../src/report/index.js';
import { iso24817 } from '../../src/rules/index.js';
import { designed } from './by-use.js';
import { leaking, partWall, sealed } from './example-case.js';

const growing: RepairCase = {
  ...partWall,
  date: '2026-02-28',
  defect: {
    ...partWall.defect,
    cause: 'internal corrosion',
    growth: { depth: corrosionRate.mmPerYear(0.1), length: corrosionRate.mmPerYear(0.2) },
  },
  repair: { ...partWall.repair, life: time.year(20) },
};
const asking = (years: number): RepairCase => ({
  ...growing,
  repair: { ...growing.repair, inspectionInterval: time.year(years) },
});

describe('the end of life', () => {
  it('goes by half of the life where the owner states no interval, and invents none', () => {
    const { inspectWithin, inspectBy, inspections } = endOfLife(designed(growing));
    expect([inspectWithin, inspectBy]).toEqual([time.year(10), 'half of the remaining life']);
    expect(inspections.map(({ after }) => time.inYear(after))).toEqual([10, 20]);
    expect(calculationSheet(designed(growing)).replaceAll(/\s+/gu, ' ')).toContain(
      'no interval of the owner is stated, and none is assumed',
    );
  });

  it('goes by the interval of the owner where that is shorter, with its days', () => {
    const { inspectBy, inspections, lastDay } = endOfLife(designed(asking(4)));
    expect(inspectBy).toBe('interval of the owner');
    // Julian years of 365.25 days from the 28th of February 2026.
    expect(inspections.map(({ day }) => day)).toEqual([
      '2030-02-28',
      '2034-02-28',
      '2038-02-28',
      '2042-02-28',
      '2046-02-28',
    ]);
    expect(lastDay).toBe('2046-02-28');
    expect(endOfLife(designed(asking(15))).inspectBy).toBe('half of the remaining life');
  });

  it('asks at each inspection for the wall that the design counts on by then', () => {
    // 5.0 mm less 0.1 mm a year; down to 1 mm after 40 years.
    const { inspections, wallLasts } = endOfLife(designed(asking(5)));
    expect(inspections.map(({ leastWall }) => length.inMm(leastWall ?? (0 as never)))).toEqual(
      [4.5, 4, 3.5, 3].map((wall) => expect.closeTo(wall, 9)),
    );
    expect(wallLasts).toEqual({ known: true, time: expect.closeTo(time.year(40), 0), until: length.mm(1) });
  });

  it('knows no time for a loss so slow that no number holds it, and still inspects within the life', () => {
    const losing = (depth: number) =>
      endOfLife(
        designed({ ...growing, defect: { ...growing.defect, growth: { depth, length: 0 } as Defect['growth'] } }),
      );
    // 4 mm at the least number there is above 0.
    expect(losing(Number.MIN_VALUE).wallLasts).toMatchObject({ known: false, because: expect.any(String) });
    expect(losing(1e-300).wallLasts.known).toBe(true);
    expect(losing(Number.MIN_VALUE).inspectWithin).toBe(time.year(10));
  });

  it('counts on no wall over a hole, and on no time where nothing grows', () => {
    expect(endOfLife(designed(leaking))).toMatchObject({ wallLasts: { known: false } });
    expect(endOfLife(designed(leaking)).inspections.every(({ leastWall }) => leastWall === undefined)).toBe(true);
    const still = endOfLife(designed(partWall));
    expect(still.wallLasts).toEqual({ known: false, because: 'the case states no further loss' });
    expect(still.inspections[0]).not.toHaveProperty('day');
  });

  it('looks at edges, wall, pressure and temperature of every repair', () => {
    const { measure } = endOfLife(designed(partWall));
    expect(measure.map(({ text }) => text.split(/ |:/u)[0])).toEqual(['Edges', 'Wall', 'Highest']);
    const { designPressure, designTemperature } = partWall.service;
    expect(measure[2]?.amounts?.map(({ value }) => value)).toEqual([designPressure, designTemperature]);
  });

  it('counts down to the least wall of the rule set that it was designed by', () => {
    const throughWallBelow = { ...iso24817.throughWallBelow, value: length.mm(2) };
    const design = designRepair(growing, { rules: { ...iso24817, throughWallBelow } });
    if (design.verdict !== 'designed') throw new Error(design.verdict);
    // 5 mm less 0.1 mm a year, down to 2 mm.
    expect(endOfLife(design).wallLasts).toMatchObject({
      time: expect.closeTo(time.year(30), 0),
      until: length.mm(2),
    });
  });

  it('looks at a hole for what weeps, and at a loss that grows for its length', () => {
    const looksFor = (repairCase: RepairCase) => {
      const texts = endOfLife(designed(repairCase)).measure.map(({ text }) => text);
      return ['Weeping', 'Length of the loss', 'Rust or swelling over the seal'].map((word) =>
        texts.some((text) => text.startsWith(word)),
      );
    };
    expect(looksFor(partWall)).toEqual([false, false, false]);
    expect(looksFor(growing)).toEqual([false, true, false]);
    expect(looksFor(leaking)).toEqual([true, true, false]);
    expect(looksFor(sealed)).toEqual([true, true, true]);
  });

  it('takes the wrap off after the life that it was designed for, and before at what it shows', () => {
    const { comesOff } = endOfLife(designed(growing));
    expect(comesOff.flatMap(({ amounts = [] }) => amounts.map(({ value }) => value))).toEqual([time.year(20)]);
    for (const word of ['leak', 'reading', 'design pressure'])
      expect(comesOff.some(({ text }) => text.includes(word))).toBe(true);
  });

  it('never inspects later for a faster loss, a shorter life or a shorter interval, and never after the life', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.19, noNaN: true }),
        fc.double({ min: 1, max: 20, noNaN: true }),
        fc.double({ min: 0.5, max: 30, noNaN: true }),
        (rate, years, interval) => {
          const at = (r: number, y: number, i: number) => {
            const growth = { depth: corrosionRate.mmPerYear(r), length: corrosionRate.mmPerYear(0.1) };
            const repair = { ...growing.repair, life: time.year(y), inspectionInterval: time.year(i) };
            return endOfLife(designed({ ...growing, defect: { ...growing.defect, growth }, repair }));
          };
          const here = at(rate, years, interval);
          expect(here.inspectWithin).toBeLessThanOrEqual(time.year(years) / 2);
          expect(here.inspections.every(({ after }) => after <= time.year(years))).toBe(true);
          expect(at(rate * 1.05, years, interval).inspectWithin).toBeLessThanOrEqual(here.inspectWithin);
          expect(at(rate, years * 0.9, interval).inspectWithin).toBeLessThanOrEqual(here.inspectWithin);
          expect(at(rate, years, interval * 0.9).inspectWithin).toBeLessThanOrEqual(here.inspectWithin);
        },
      ),
      { seed: 20261125, numRuns: 30 },
    );
  });

  it('stands in the plan where the line goes back', () => {
    const text = JSON.stringify(planWork(designed(asking(4))).steps.find(({ id }) => id === 'return'));
    expect(text).toContain('by the interval of the owner: 2030-02-28 at the latest');
  });
});

describe('the simpler route', () => {
  const low: RepairCase = {
    ...partWall,
    basis: 'ASME PCC-2',
    service: {
      ...partWall.service,
      designPressure: 5e5 as never,
      designTemperature: temperature.degC(35),
    },
  };
  const routeOf = (repairCase: RepairCase) =>
    designRepair(repairCase).assumed.filter(({ amount }) => amount.name === 'route');

  it('is named where the screening would allow it, and not taken', () => {
    expect(routeOf(low)).toHaveLength(1);
    expect(routeOf(low)[0]?.because).toContain('not known well enough to ship');
  });

  it('is not named at a pressure of high risk, nor by the other set', () => {
    expect(routeOf({ ...low, service: { ...low.service, designPressure: 1e6 as never } })).toEqual([]);
    expect(routeOf({ ...low, basis: 'ISO 24817' })).toEqual([]);
  });
});
