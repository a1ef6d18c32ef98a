import { describe, expect, it } from 'vitest';
import { length, temperature, time } from '../../../src/quantity/index.js';
import { type AsBuiltPointName, compareAsBuilt, type Designed } from '../../../src/repair/index.js';
import { madeOf } from '../../faults/answers.js';
import { bend, leak, loss, type Paths, quietLoss, slot, withPaths } from '../../faults/cases.js';
import { compared, goodRecord, pointOf } from '../../faults/records.js';
import { designed } from '../by-use.js';
import { waterTape } from '../plan-cases.js';

/** What a point shows of a record: the number, its limit, and which of two sayings decides. */

const wallLoss = madeOf(loss);
const quiet = madeOf(quietLoss);
const { laidThickness, thickness } = wallLoss.laminate;
const slotted = madeOf(slot);

const pointsIn = (design: Designed, changes: Paths, name: AsBuiltPointName) =>
  compared(design, changes).points.filter(({ point }) => point === name);

describe('the numbers of a point', () => {
  it.each<[string, Designed, AsBuiltPointName, Paths, number, number | undefined]>([
    ['a line that rose', wallLoss, 'line pressure', { line: { highestPressure: 9e6 } }, 9e6, wallLoss.line.pressure],
    [
      'a laminate beyond the equations of a thin one',
      quiet,
      'thickness',
      { layers: 18, thickness: 0.0144 },
      0.0144,
      0.1683 / 12,
    ],
    [
      'a laminate that is resin in part',
      wallLoss,
      'thickness',
      { 'inspection.resinRichThickness': 0.005 },
      laidThickness - 0.005,
      thickness.value,
    ],
    [
      'layers that are thinner on their witness',
      wallLoss,
      'thickness',
      { plyThickness: 0.7e-3 },
      11 * 0.7e-3,
      thickness.value,
    ],
    ['an overlap that runs into the taper', wallLoss, 'overlap', { leastOverlap: 0.249 }, 0.0006, 0.048],
    [
      'a thickness that contradicts the layers',
      wallLoss,
      'thickness',
      { thickness: 1.5 * laidThickness },
      1.5 * laidThickness,
      laidThickness,
    ],
    [
      'a slot that nobody knew of, by its longer side',
      wallLoss,
      'slot',
      { 'survey.slot': { axialLength: 0.012, circumferentialWidth: 0.07 } },
      0.07,
      undefined,
    ],
  ])('are what was found and its limit: %s', (_, design, name, changes, found, limit) => {
    const [point] = pointsIn(design, changes, name);
    expect(point?.verdict).not.toBe('meets');
    expect(point?.found?.value).toBeCloseTo(found, 9);
    if (limit === undefined) expect(point?.limit).toBeUndefined();
    else expect(point?.limit?.value).toBeCloseTo(limit, 9);
  });
});

describe('the thickness that counts as laid', () => {
  it.each([
    ['a wall loss', wallLoss],
    ['a leak', madeOf(leak)],
  ])('is that of the layers at the ply of their witness, where that is less: %s', (_, design) => {
    const { plies, thickness: needed } = design.laminate;
    const at = (each: number) => pointsIn(design, { plyThickness: each / plies }, 'thickness')[0]?.verdict;
    expect([at(needed.value * 1.001), at(needed.value * 0.999)]).toEqual(['meets', 'does not meet']);
  });

  it('is rated without its resin-rich layer, as so much less of a reading', () => {
    const untested = madeOf(withPaths(loss, { 'acceptance.pressureTest': 'none' }));
    const rated = (changes: Paths) => compared(untested, { pressureTest: undefined, ...changes }).goodFor;
    for (const rich of [0.8e-3, 3e-3]) {
      const { pressure } = rated({ 'inspection.resinRichThickness': rich }) ?? {};
      expect(pressure).toBeLessThan(untested.case.service.designPressure);
      expect(pressure).toBe(rated({ thickness: laidThickness - rich })?.pressure);
    }
    for (const rich of [8.7e-3, laidThickness, 1])
      expect(rated({ 'inspection.resinRichThickness': rich })).toEqual({
        because: { text: 'the laminate is thinner than the fewest plies that may be laid' },
      });
  });

  it('is what its test may not have gone above', () => {
    // The test of the whole would have strained what is left of it.
    expect(compared(wallLoss, { 'inspection.resinRichThickness': 3e-3 }).goodFor?.because.text).toMatch(
      /the test went to/u,
    );
  });
});

describe('the opening of a slot', () => {
  // 12 mm along the pipe and 70 mm round it.
  const opened = (axialLength: number, circumferentialWidth: number, changes: Paths = {}) =>
    pointsIn(slotted, { 'survey.slot': { axialLength, circumferentialWidth }, ...changes }, 'slot');
  const verdicts = (...of: Parameters<typeof opened>) => opened(...of).map(({ verdict }) => verdict);

  it('is held to the design along the pipe and round it, each with its number', () => {
    const { axialLength, circumferentialWidth } = slotted.case.defect.slot ?? slotted.case.defect;
    expect(verdicts(axialLength, circumferentialWidth)).toEqual(['meets', 'meets']);
    expect(verdicts(0.013, 0.07)).toEqual(['does not meet', 'meets']);
    expect(verdicts(0.012, 0.071)).toEqual(['meets', 'does not meet']);
    const [along, round] = opened(0.013, 0.06);
    expect([along?.found?.value, along?.limit?.value, along?.text]).toEqual([
      0.013,
      axialLength,
      'the slot along the pipe is larger than the repair was designed for',
    ]);
    expect(along?.shortfall?.value).toBeCloseTo(0.001, 9);
    expect([round?.found?.value, round?.limit?.value]).toEqual([0.06, circumferentialWidth]);
  });

  it('is not shown where nobody measured it, and has no hole beside it', () => {
    for (const survey of [undefined, { leastWall: 0.004 }])
      expect(pointsIn(slotted, { survey }, 'slot')).toMatchObject([
        { verdict: 'not shown', text: 'nobody measured the opening of the slot after the steel was prepared' },
      ]);
    expect(verdicts(0.012, 0.07, { 'survey.hole': 0 })).toEqual(['meets', 'meets']);
    expect(opened(0.012, 0.07, { 'survey.hole': 0.001 })[2]).toMatchObject({
      verdict: 'does not meet',
      text: expect.stringContaining('a hole beside the slot'),
    });
  });

  it('of no size is no point of a repair without one', () => {
    const none = { 'survey.slot': { axialLength: 0, circumferentialWidth: 0 } };
    for (const changes of [none, { 'survey.hole': 0 }])
      expect(compared(wallLoss, changes).points).toEqual(compared(wallLoss).points);
    expect(compared(slotted).points.map(({ point }) => point)).not.toContain(undefined);
  });
});

describe('the overlap of a record', () => {
  const { overlap, totalLength } = wallLoss.extent;
  const point = (leastOverlap: number, laid: number | undefined) =>
    pointsIn(wallLoss, { leastOverlap, length: laid }, 'overlap')[0];

  it('may be far less than what a longer laminate leaves, and is enough where the length is not known', () => {
    // Half as much again at either end.
    expect(point(overlap.value, totalLength + overlap.value)?.verdict).toBe('meets');
    expect(point(overlap.value, undefined)?.verdict).toBe('meets');
  });

  it('leaves half of the designed taper at least, of a longer laminate as well', () => {
    // 48 mm of it.
    const { taper } = wallLoss.extent;
    expect(taper).toBeCloseTo(0.048, 9);
    for (const longer of [0, 0.02]) {
      const at = (share: number) =>
        point(overlap.value + longer / 2 + (1 - share) * taper, totalLength + longer)?.verdict;
      expect([at(1), at(0.51), at(0.49), at(0.01), at(0)]).toEqual([
        ...['meets', 'meets'],
        ...['not shown', 'not shown', 'not shown'],
      ]);
    }
  });

  it('of more than twice the design is a slip, whatever the length leaves', () => {
    expect(point(2.1 * overlap.value, totalLength)?.text).toMatch(/more than twice/u);
  });
});

describe('the cure of a moisture-cured tape', () => {
  it('is not shown once a part of it was colder than the sample of the transition', () => {
    const rows = [10, 25, 40].map((degrees, index) => ({
      ...{ temperature: `${degrees} degC`, humidity: `${[20, 60, 95][index]} %` },
      ...{ cureTime: '6 h', workingTime: '20 min' },
    }));
    const moist = madeOf(
      withPaths(quietLoss, {
        'laminate.cure': { mechanism: 'moisture', rows },
        'laminate.transitionCuredAt': '20 degC',
        resin: 'none',
      }),
    );
    const step = (hours: number, degrees: number) => ({
      duration: time.hour(hours),
      temperature: temperature.degC(degrees),
    });
    const said = (...cure: object[]) => pointsIn(moist, { cure }, 'cure')[0];
    expect(said(step(60, 25))?.verdict).toBe('meets');
    for (const cure of [[step(60, 25), step(1, 15)], [step(60, 15)]])
      expect(said(...cure)?.text).toContain('colder than the sample of the transition');
  });
});

describe('a record', () => {
  it('may leave a field open by name, known or not, and say null of a seal', () => {
    const open = { ...goodRecord(wallLoss), remarks: undefined };
    expect(compareAsBuilt(wallLoss, open).verdict).toBe('meets');
    expect(pointOf(wallLoss, { seal: null }, 'steel')).toBe('meets');
  });

  it('names each batch whose witness nobody measured, and asks for none of a tape that brings its resin', () => {
    const unread = (goodRecord(quiet).batches ?? []).map(({ witnessHardness: _, ...batch }) => batch);
    expect(pointsIn(quiet, { batches: unread }, 'witness')[0]?.text).toBe(
      `nobody measured the hardness of the witness of: ${unread.map(({ number }) => number).join(', ')}`,
    );
    const ofWater = designed(waterTape);
    const foreign = { number: 'R 1', use: 'laminate resin', base: 1, hardener: 0.3, usedWithin: 60 };
    expect(pointsIn(ofWater, { batches: [foreign] }, 'witness')).toEqual([]);
  });

  it('may be read on steel as cold as the resin cures, by a thermometer without error', () => {
    const exact = madeOf(
      withPaths(quietLoss, { 'site.instruments': { temperatureError: '0 K', humidityError: '0 %' } }),
    );
    const climate = [{ steelTemperature: temperature.degC(10), airTemperature: 273.15, relativeHumidity: 0.5 }];
    expect(pointOf(exact, { climate }, 'climate')).toBe('meets');
  });
});

describe('a bend whose laminate is too thin', () => {
  it('is rated for no pressure: what less holds on a fitting is not known', () => {
    const curved = madeOf(bend);
    const { goodFor } = compared(curved, {
      thickness: curved.laminate.laidThickness - length.mm(0.5),
      layers: curved.laminate.plies - 1,
    });
    expect(goodFor).toMatchObject({ because: { text: expect.stringContaining('on a fitting is not known') } });
    expect(goodFor?.pressure).toBeUndefined();
  });
});
