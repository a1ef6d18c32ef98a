import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { outcomesOf } from '../../src/compare/index.js';
import { interval, withInputs } from '../../src/doubt/index.js';
import { gauge, length, time } from '../../src/quantity/index.js';
import { designRepair, type Filler, laidInCase, type RepairCase } from '../../src/repair/index.js';
import { intervalSheet } from '../../src/report/index.js';
import { designed } from '../repair/by-use.js';
import { leaking, partWall } from '../repair/example-case.js';

const tolerances = {
  'pipe.outsideDiameter': 0.002,
  'defect.remainingWall': { below: 0.0005, above: 0.0002 },
  'service.designTemperature': 5,
};

/** Of a case designed anew, but with what the plies of the case as stated resist there. */
function resultsIn(repairCase: RepairCase): { readonly name: string; readonly value: number | undefined }[] {
  const { resistance, pressure } = laidInCase(designed(partWall), repairCase);
  return outcomesOf(designRepair(repairCase)).map(({ name, value }) => {
    if (name === 'resistance') return { name, value: resistance?.value };
    return name === 'margin' ? { name, value: (resistance?.value ?? Number.NaN) / pressure - 1 } : { name, value };
  });
}

describe('the interval of a design', () => {
  it('holds the nominal of every result, and every design within the box', () => {
    const found = interval(partWall, tolerances);
    expect([found.corners, found.without]).toEqual([8, []]);
    fc.assert(
      fc.property(fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 3, maxLength: 3 }), (at) => {
        const values = found.inputs.map(({ path, value, least, most }, index) => {
          const share = at[index] ?? 0;
          return [path, value + (share < 0 ? share * (value - least) : share * (most - value))] as const;
        });
        const inside = resultsIn(withInputs(partWall, values));
        for (const { name, least, most, nominal } of found.outcomes) {
          const value = inside.find((each) => each.name === name)?.value ?? Number.NaN;
          const slack = 1e-9 * Math.abs(most);
          expect(value, name).toBeGreaterThanOrEqual(least - slack);
          expect(value, name).toBeLessThanOrEqual(most + slack);
          expect(nominal, name).toBeGreaterThanOrEqual(least);
          expect(nominal, name).toBeLessThanOrEqual(most);
        }
      }),
      { seed: 20261125, numRuns: 60 },
    );
  });

  it('is that of the corners that it names', () => {
    for (const { name, least, most, at } of interval(partWall, tolerances).outcomes) {
      const by = (corner: Readonly<Record<string, number>>) =>
        resultsIn(withInputs(partWall, Object.entries(corner))).find((each) => each.name === name)?.value;
      expect([by(at.least), by(at.most)], name).toEqual([least, most]);
    }
  });

  it('finds an end that no guess of one side at a time would: two inputs that help each other', () => {
    const growing: RepairCase = {
      ...partWall,
      pipe: { ...partWall.pipe, wallThickness: length.mm(12) },
      repair: { ...partWall.repair, life: time.year(10), method: 'substrate yielded' },
      service: { ...partWall.service, designPressure: gauge.MPa(9) },
      filler: { ...(partWall.filler as Filler), thicknessOverDefect: length.mm(8) },
    };
    const found = interval(growing, { 'defect.remainingWall': 0.001, 'pipe.outsideDiameter': 0.01 });
    const thickness = found.outcomes.find(({ name }) => name === 'thickness');
    const corner = thickness?.at.most ?? {};
    expect(corner['defect.remainingWall']).toBe(growing.defect.remainingWall - 0.001);
    expect(corner['pipe.outsideDiameter']).toBe((growing.pipe.outsideDiameter ?? 0) + 0.01);
  });

  it('is a point where nothing may be off', () => {
    for (const { least, most, nominal } of interval(leaking, { 'defect.holeDiameter': 0 }).outcomes)
      expect([least, most]).toEqual([nominal, nominal]);
  });

  it('says which corner has no design, and why', () => {
    const found = interval(partWall, { 'defect.remainingWall': { below: 0, above: 0.01 } });
    expect(found.without).toHaveLength(1);
    expect(found.without[0]).toMatchObject({ verdict: 'refused' });
    expect(intervalSheet(found)).toContain('Corners without a design');
  });

  it('stands on a sheet with its ends', () => {
    const text = intervalSheet(interval(partWall, tolerances), { units: 'us' });
    expect(text).toContain('Of 8 corners 8 are designed.');
    expect(text).toContain('The ends lie at');
  });

  it.each<[what: string, asked: Record<string, number>]>([
    ['a path without a number', { 'pipe.material.name': 1 }],
    ['a path that is none', { 'pipe.wall': 1 }],
    ['a tolerance below nought', { 'pipe.wallThickness': -1 }],
    ['a tolerance that is none', { 'pipe.wallThickness': Number.NaN }],
  ])('is refused for %s', (_, asked) => {
    expect(() => interval(partWall, asked)).toThrow(Object.keys(asked)[0]);
  });

  it('is refused for more inputs than can be cornered', () => {
    const rows = Array.from({ length: 13 }, (_, index) => ({ position: length.mm(10 * index), depth: length.mm(1) }));
    const many = { ...partWall, defect: { ...partWall.defect, profile: rows } } as RepairCase;
    const asked = Object.fromEntries(rows.map((__, index) => [`defect.profile[${index}].depth`, 1e-4]));
    expect(() => interval(many, asked)).toThrow('at most 12 inputs');
  });
});

describe('an interval of which no corner is designed', () => {
  it('has no result, and its sheet says so in place of a table', () => {
    const found = interval(partWall, { 'service.designPressure': 1e9 });
    expect([found.nominal.verdict, found.corners, found.without.length]).toEqual(['designed', 2, 2]);
    expect(found.outcomes).toEqual([]);
    expect(intervalSheet(found).replaceAll(/\s+/gu, ' ')).toContain('Of 2 corners 0 are designed, 2 not');
    expect(intervalSheet(found)).toContain('No corner is designed');
  });
});
