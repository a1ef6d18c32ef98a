import { describe, expect, it } from 'vitest';
import type { AsBuiltPointName, Designed } from '../../src/repair/index.js';
import { madeOf } from './answers.js';
import { leak, loss, type Paths, quietLoss, withPaths } from './cases.js';
import { barRatedFor, compared, goodRecord, pointOf } from './records.js';

/** Issue 8, part A 3; the last of issue 9, item 9. */

/** 40 bar: 7.69 mm required, 10 plies of 0.8 mm laid. */
const design = madeOf(loss);

describe('the thickness of a repair as it was made', () => {
  /** 0.2 bar: a few hundredths of a millimetre required, the least 2 plies of 0.8 mm laid. */
  const low = madeOf(withPaths(quietLoss, { 'service.designPressure': '0.2 bar' }));

  it('meets where all of it lies there', () => {
    expect([compared(design).verdict, pointOf(low, {}, 'thickness')]).toEqual(['meets', 'meets']);
    expect([low.laminate.plies, low.laminate.laidThickness]).toEqual([2, 0.0016]);
  });

  it('of 0.05 mm where two plies of 0.8 mm are the least never meets', () => {
    expect(pointOf(low, { thickness: 0.05e-3 }, 'thickness')).toBe('does not meet');
  });

  it('between what is required and the least number of plies never meets', () => {
    expect(low.laminate.thickness.value).toBeLessThan(1e-3);
    expect(pointOf(low, { thickness: 1e-3 }, 'thickness')).toBe('does not meet');
  });

  it('is held to the ply as it was measured: two of 0.9 mm are 1.8', () => {
    const of = (thickness: number) => pointOf(low, { thickness, plyThickness: 0.9e-3 }, 'thickness');
    expect([of(1.7e-3), of(1.8e-3)]).toEqual(['does not meet', 'meets']);
  });

  it('meets with the layers counted only where they were, and were as many as planned', () => {
    expect(
      [low.laminate.plies, low.laminate.plies - 1, undefined].map((layers) => pointOf(low, { layers }, 'layers')),
    ).toEqual(['meets', 'does not meet', 'not shown']);
  });
});

describe('a repair that has to come off', () => {
  const thin = { thickness: 7.2e-3 };

  it('is rated where it is only thin', () => {
    expect(barRatedFor(design, thin)).toBeGreaterThan(30);
  });

  it.each<[string, Paths]>([
    ['it stays soft', { 'hardness.readings': [40, 40, 40, 40, 40] }],
    ['it leaks under test', { 'pressureTest.leak': 'at the repair' }],
    ['its fibre is dry', { 'inspection.findings': [{ feature: 'dry fibre' }] }],
    ['it lies on oil', { 'steel.isFreeOfOil': false }],
  ])('is rated for no pressure: %s', (_, change) => {
    expect(barRatedFor(design, { ...thin, ...change })).toBeUndefined();
  });
});

describe('what was not measured', () => {
  // Tested at no more than what is left holds.
  const short = { leastOverlap: 0.04, 'pressureTest.lowestPressure': 2e5, 'pressureTest.highestPressure': 2e5 };

  it.each<[string, Paths]>([
    ['the thickness', { thickness: undefined }],
    ['thickness and layers', { thickness: undefined, layers: undefined }],
  ])('counts as nothing, never as full: %s', (_, change) => {
    expect(barRatedFor(design, short)).toBeGreaterThan(0);
    expect(barRatedFor(design, { ...short, ...change })).toBeUndefined();
  });
});

describe('cure and batches as they were', () => {
  const cured = (celsius: number) => ({ cure: [{ duration: 60 * 3600, temperature: celsius + 273.15 }] });

  it('meet inside what the maker tested', () => {
    expect(pointOf(design, cured(40), 'cure')).toBe('meets');
  });

  it('above the span that the maker tested never meet: 100 degC where he tested to 40', () => {
    expect(pointOf(design, cured(100), 'cure')).not.toBe('meets');
  });

  it('of one hundredth of the mass never meet', () => {
    const { batches = [] } = goodRecord(design);
    const tiny = batches.map((batch) => ({ ...batch, base: batch.base / 100, hardener: batch.hardener / 100 }));
    expect(pointOf(design, { batches: tiny }, 'batches')).toBe('does not meet');
  });

  it('are not shown without the date before which a pack may be used', () => {
    expect(pointOf(design, { 'batches.0.useBefore': undefined }, 'batches')).toBe('not shown');
  });

  it('are not shown without the day on which a pack was mixed', () => {
    expect(pointOf(design, { 'batches.0.mixedOn': undefined }, 'batches')).toBe('not shown');
  });

  it('are not shown on steel whose salts nobody measured', () => {
    expect(pointOf(design, { 'steel.salts': undefined }, 'steel')).toBe('not shown');
  });
});

describe('a moisture-cured laminate that takes 48 h', () => {
  const row = (cureTime: string) => [{ temperature: '25 degC', humidity: '50 %', cureTime, workingTime: '3 h' }];
  const overFiller = (name: string): Designed =>
    madeOf(
      withPaths(loss, {
        'laminate.name': 'tape',
        'laminate.cure': { mechanism: 'moisture', rows: row('48 h') },
        'filler.name': name,
        'filler.cure': { mechanism: 'moisture', rows: row('9 h') },
        'site.forecast': undefined,
        'site.pipeTemperature': '25 degC',
        'site.airTemperature': '25 degC',
      }),
    );
  const nineHours = { cure: [{ duration: 9 * 3600, temperature: 298.15 }] };

  it('is not cured after 9 h', () => {
    expect(pointOf(overFiller('filler'), nineHours, 'cure')).toBe('does not meet');
  });

  it('is not cured after 9 h over a filler of the same name that takes 9 h', () => {
    expect(pointOf(overFiller('tape'), nineHours, 'cure')).toBe('does not meet');
  });
});

/** 6 bar on a pinhole, bands removed before the wrap. */
const leakDesign = madeOf(leak);

describe('a repair over a leak', () => {
  it('meets where everything was seen and is good', () => {
    expect(compared(leakDesign).points.filter(({ verdict }) => verdict !== 'meets')).toEqual([]);
  });

  it.each<[string, AsBuiltPointName, Paths]>([
    ['whose seal wept', 'seal', { 'seal.heldDry': false }],
    ['whose putty was soft', 'putty firm', { 'seal.puttyWasFirm': false }],
    ['whose bands lie under the wrap', 'bands', { 'seal.bandsWereRemoved': false }],
    ['whose hole has opened', 'hole', { 'survey.hole': 0.02 }],
    ['whose wall was thinner than surveyed', 'wall', { 'survey.leastWall': 0.5e-3 }],
  ])('%s does not meet, and is rated for nothing', (_, point, change) => {
    expect(pointOf(leakDesign, change, point)).toBe('does not meet');
    expect(
      barRatedFor(leakDesign, { ...change, thickness: leakDesign.laminate.thickness.value * 0.95 }),
    ).toBeUndefined();
  });

  it.each<[string, AsBuiltPointName, Paths]>([
    ['the seal', 'seal', { seal: undefined }],
    ['the putty', 'putty firm', { 'seal.puttyWasFirm': undefined }],
    ['the bands', 'bands', { 'seal.bandsWereRemoved': undefined }],
    ['the hole', 'hole', { 'survey.hole': undefined }],
    ['the wall', 'wall', { survey: undefined }],
    ['a signature', 'signatures', { 'signed.4.by': ' ' }],
    ['all signatures', 'signatures', { signed: undefined }],
  ])('is not shown where nobody recorded %s', (_, point, change) => {
    expect(pointOf(leakDesign, change, point)).toBe('not shown');
  });

  it('asks for no bands where they stay, and for no seal where there is none', () => {
    const left = madeOf(withPaths(leak, { 'seal.bands': 'left' }));
    const names = (made: Designed) => compared(made).points.map(({ point }) => point);
    expect(names(leakDesign)).toContain('bands');
    expect(names(left)).not.toContain('bands');
    expect(names(design)).not.toContain('seal');
  });
});

describe('a wall that preparation uncovered', () => {
  it('meets as surveyed, and does not meet a tenth of a millimetre thinner', () => {
    const surveyed = design.case.defect.remainingWall;
    const at = (leastWall: number) => pointOf(design, { 'survey.leastWall': leastWall }, 'wall');
    expect([at(surveyed + 1e-4), at(surveyed), at(surveyed - 1e-4)]).toEqual(['meets', 'meets', 'does not meet']);
  });
});

describe('a pressure test as it was made', () => {
  const { pressure, resistance } = design.acceptance.pressureTest;
  const wentTo = (highest: number, of = design) =>
    pointOf(of, { 'pressureTest.highestPressure': highest }, 'pressure test');

  it('meets within a twentieth over the stated pressure, and not beyond', () => {
    expect(resistance).toBeGreaterThan(pressure * 1.06);
    expect([wentTo(pressure * 1.05), wentTo(pressure * 1.06)]).toEqual(['meets', 'does not meet']);
  });

  it('does not meet above what the laminate resists that day, nor above the lowest rating', () => {
    const rating = { 'acceptance.pressureTest.lowestRating': `${pressure * 1.02} Pa` };
    const rated = madeOf(withPaths(loss, rating));
    expect([wentTo(pressure * 1.01, rated), wentTo(pressure * 1.03, rated)]).toEqual(['meets', 'does not meet']);
    const weak = structuredClone(design) as Designed;
    const test = { ...weak.acceptance.pressureTest, resistance: pressure * 1.02 };
    const low = { ...weak, acceptance: { ...weak.acceptance, pressureTest: test } } as Designed;
    expect([wentTo(pressure * 1.01, low), wentTo(pressure * 1.03, low)]).toEqual(['meets', 'does not meet']);
  });

  it('does not meet by its lowest pressure alone, where nobody recorded the highest', () => {
    const at = (lowest: number) => ({
      'pressureTest.highestPressure': undefined,
      'pressureTest.lowestPressure': lowest,
    });
    expect(pointOf(design, at(pressure * 3), 'pressure test')).toBe('does not meet');
    expect(pointOf(design, at(pressure), 'pressure test')).toBe('not shown');
  });

  it('says by how much it went too far', () => {
    const found = compared(design, { 'pressureTest.highestPressure': pressure * 2 }).points.find(
      ({ point }) => point === 'pressure test',
    );
    expect(found?.shortfall?.value).toBeGreaterThan(0);
  });

  it('puts a fall down to cooling in fresh water only', () => {
    const other = madeOf(withPaths(loss, { 'acceptance.pressureTest.liquid': 'other' }));
    const fell = { 'pressureTest.fall': 'only cooling' };
    expect([design, other].map((made) => pointOf(made, fell, 'pressure test'))).toEqual(['meets', 'not shown']);
  });

  it('that nobody asked for still may not leak or go above the resistance', () => {
    const none = madeOf(withPaths(loss, { 'acceptance.pressureTest': 'none' }));
    const at = (change: Paths) => pointOf(none, change, 'pressure test');
    expect(at({ pressureTest: undefined })).toBe('meets');
    expect(at({ 'pressureTest.leak': 'at the repair' })).toBe('does not meet');
    expect(at({ 'pressureTest.highestPressure': none.acceptance.pressureTest.resistance * 1.01 })).toBe(
      'does not meet',
    );
  });
});

describe('the climate as it was', () => {
  const at = (celsius: number) => ({ 'climate.0.steelTemperature': celsius + 273.15 });

  it('does not meet on steel hotter than the makers tested', () => {
    expect([40, 41, 90].map((celsius) => pointOf(design, at(celsius), 'climate'))).toEqual([
      'meets',
      'does not meet',
      'does not meet',
    ]);
  });
});
