import { describe, expect, it } from 'vitest';
import { asksFor, designOf, planOf, refusedFields, stepOf, verdictOf } from './answers.js';
import { emptyLeak, leak, live, loss, withPaths } from './cases.js';

/** What a second person found who read no code and wanted to hurt somebody with a valid case. */

describe('bands that come off before the wrap', () => {
  const strong = {
    'seal.siteLimit': '7 bar',
    'seal.band.strength': '1000 MPa',
    'seal.band.thickness': '1.5 mm',
    'seal.fastener.permittedTension': '20 kN',
    'seal.sheet.thickness': '1.5 mm',
    'defect.remainingWall': '7.9 mm',
    'defect.growth': { depth: '0 mm/year', length: '0 mm/year' },
  };

  it('leave no putty alone against 5 bar: the force on the pad is a reason', () => {
    const { verdict, reasons } = designOf(withPaths(leak, { ...strong, ...live('5 bar') }));
    expect(verdict).not.toBe('designed');
    const force = reasons.find(({ found }) => found?.name === 'force on the pad');
    // 5 bar on 54 mm
    expect(force?.found?.value).toBeCloseTo(5e5 * (Math.PI / 4) * 0.054 ** 2, 6);
    expect(force?.limit?.value).toBe(150);
  });

  it('leave none under a pump, however low: only a static head stands still', () => {
    expect(verdictOf(withPaths(leak, live('0.2 bar')))).not.toBe('designed');
    expect(verdictOf(withPaths(leak, { ...live('0.2 bar'), 'seal.bands': 'left' }))).toBe('designed');
  });

  it('are warned of at the step at which they come off', () => {
    const { does } = stepOf(planOf(leak), 'putty');
    expect(does.some(({ text }) => text.startsWith('WARNING') && text.includes('putty alone'))).toBe(true);
  });
});

describe('a sheet', () => {
  it('covers its pad', () => {
    expect(verdictOf(withPaths(leak, { 'seal.sheet.across': '30 mm' }))).not.toBe('designed');
  });
});

describe('readings of the wall that give a rate', () => {
  const growth = (previousWall: string) => ({ 'defect.growth.depth.previousWall': previousWall });

  it('never grew back', () => {
    expect(refusedFields(withPaths(leak, growth('2 mm')))).toEqual(['defect.growth.depth.previousWall']);
  });

  it('were never thicker than the pipe', () => {
    expect(refusedFields(withPaths(leak, growth('36 mm')))).toEqual(['defect.growth.depth.previousWall']);
  });

  it('count with the error of the reading: (3.6 - (3.1 - 1.0))/5 a year', () => {
    const { found } = designOf(withPaths(leak, { 'defect.readingError': '1 mm', 'repair.life': '5 year' }));
    expect(found?.wallAtEndOfLife).toBeCloseTo(0.0021 - 5 * (0.0015 / 5), 9);
  });
});

describe('steel that is colder in the nights of the forecast than ever in service', () => {
  it('is asked about', () => {
    const { forecast } = (leak as { site: { forecast: readonly object[] } }).site;
    const cold = forecast.map((hours, index) => (index === 5 ? { ...hours, pipeTemperature: '-25 degC' } : hours));
    expect(asksFor(withPaths(leak, { 'site.forecast': cold }), 'laminate.lowestTemperature')).toBe(true);
    expect(asksFor(leak, 'laminate.lowestTemperature')).toBe(false);
  });
});

describe('a ply', () => {
  it('has the fabric that its thickness takes', () => {
    expect(refusedFields(withPaths(loss, { 'resin.fabricWeight': '200 g/m2' }))).toEqual(['laminate.plyThickness']);
    expect(refusedFields(withPaths(loss, { 'resin.fabricWeight': '3000 g/m2' }))).toEqual(['laminate.plyThickness']);
  });
});

describe('a cure on heated steel', () => {
  const heated = {
    'site.history': [{ duration: '300 h', temperature: '30 degC' }],
    'laminate.transitionCuredAt': '28 degC',
  };

  it('is told to the crew that waits for the first resin, with the coldest that the steel may get', () => {
    const { does } = stepOf(planOf(withPaths(emptyLeak, heated)), 'filler-wait');
    const told = does.find(({ text }) => text.includes('heated above its forecast'));
    expect(told?.amounts?.[0]?.value).toBeCloseTo(303.15, 6);
    const plain = planOf(emptyLeak).steps.flatMap(({ does }) => does);
    expect(plain.some(({ text }) => text.includes('heated above its forecast'))).toBe(false);
  });
});

describe('a hole off the middle of its defect', () => {
  it('is measured in the survey, since the overlap is counted from the ends of the defect', () => {
    const { goes } = stepOf(planOf(leak), 'survey');
    const place = goes.find(({ text }) => text.startsWith('Hole from the middle'));
    // 64 mm of defect at the end of life, 54 mm of pad
    expect(place?.amounts?.[0]?.value).toBeCloseTo(0.005, 9);
    expect(place?.text).toContain('____');
  });
});

describe('a laminate that moisture cures', () => {
  const row = (humidity: string, cureTime: string) => ({
    temperature: '5 degC',
    humidity,
    cureTime,
    workingTime: '20 min',
  });
  const hot = { temperature: '40 degC', humidity: '100 %', cureTime: '1 h', workingTime: '10 min' };
  const moist = {
    resin: 'none',
    'laminate.cure': { mechanism: 'moisture', rows: [row('20 %', '40 h'), row('70 %', '6 h'), hot] },
    'site.relativeHumidity': '72 %',
    'site.history': undefined,
  };
  const waitIn = (relativeHumidity: string): number => {
    const hours = { duration: '200 h', pipeTemperature: '18 degC', airTemperature: '17 degC', relativeHumidity };
    const { timeline } = designOf(withPaths(emptyLeak, { ...moist, 'site.forecast': [hours] }));
    const cure = timeline?.steps.find(({ id }) => id === 'cure')?.duration;
    return cure?.known === true ? cure.time / 3600 : Number.NaN;
  };

  it('waits for the driest air of the forecast, not for that of the first reading', () => {
    expect([waitIn('72 %'), waitIn('65 %')]).toEqual([6, 40]);
  });
});

describe('a day that the calendar does not have', () => {
  it('is no day of a reading', () => {
    const read = (date: string) => ({ 'service.recentPressure': { pressure: '1 bar', date }, date: '2026-03-05' });
    expect(refusedFields(withPaths(loss, read('2026-02-30')))).toEqual(['service.recentPressure.date']);
    expect(refusedFields(withPaths(loss, read('2026-02-28')))).toEqual([]);
  });
});
