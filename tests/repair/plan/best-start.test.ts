import { describe, expect, it } from 'vitest';
import { ratio, speed, type Time, temperature, time } from '../../../src/quantity/index.js';
import { bestStart, caseStartingAt, type ForecastStep, type RepairCase } from '../../../src/repair/index.js';
import { planned, waterTape } from '../plan-cases.js';

/** Which hour of the forecast a job best starts at, by reasons that need no design. */

const hours = (count: number, degrees: number, percent: number): ForecastStep => ({
  duration: time.hour(count),
  pipeTemperature: temperature.degC(degrees),
  airTemperature: temperature.degC(degrees),
  relativeHumidity: ratio.percent(percent),
});
const over = (repairCase: RepairCase, ...forecast: ForecastStep[]): RepairCase => {
  const { duration: _, ...now } = forecast[0] as ForecastStep;
  return { ...repairCase, site: { ...repairCase.site, ...now, forecast } };
};

describe('the best start', () => {
  it('is the earlier of two that bring the line back at the same hour', () => {
    // Work that nobody has timed takes no time here: from every hour of even weather the line is back later by that hour.
    const { best, tried } = bestStart(over(planned, hours(60, 20, 55)));
    expect(best?.start).toBe(0);
    const [first, second] = tried;
    expect((second?.notBackBefore ?? 0) - (first?.notBackBefore ?? 0)).toBeCloseTo(3600, 6);
  });

  it('is not the first that will do where a later one is back sooner', () => {
    // Cold steel at first: each of those hours counts for less, and a job that waits is no slower than one that began in it.
    const { best, tried } = bestStart(over(planned, hours(10, 11, 50), hours(60, 30, 40)));
    const back = tried.flatMap(({ weather, notBackBefore }) => (weather === 'go' ? [notBackBefore ?? Infinity] : []));
    expect(back.length).toBeGreaterThan(2);
    expect(best?.notBackBefore).toBe(Math.min(...back));
    for (const each of tried)
      if (each.weather === 'go' && each.start < (best?.start ?? 0))
        expect(each.notBackBefore).toBeGreaterThan(best?.notBackBefore ?? Infinity);
  });

  it('of a crew that nobody stated has no hour on the clock, and every wrap counts as laid in time', () => {
    const { crew: _, ...nobody } = planned;
    const { best, tried } = bestStart(over(nobody, hours(60, 20, 55)));
    expect(best?.start).toBe(0);
    for (const each of tried) {
      expect('clock' in each).toBe(false);
      expect(each.fits).toBe(true);
    }
  });

  it('is none where the repair is not designed, whatever the weather', () => {
    const { best, tried } = bestStart(over({ ...planned, fitting: { kind: 'tee' } }, hours(30, 20, 55)));
    expect(best).toBeUndefined();
    expect(tried).toHaveLength(30);
    for (const { verdict, fits } of tried) expect([verdict, fits]).toEqual(['not covered', true]);
  });

  it('is none where nothing says how long the cure takes: the forecast ends before it', () => {
    const { best, tried } = bestStart(over(planned, hours(6, 20, 55)));
    expect(best).toBeUndefined();
    expect(tried).toHaveLength(6);
  });

  it('without a forecast can only be now', () => {
    const { tried } = bestStart({ ...planned, site: { ...planned.site, forecast: undefined } });
    expect(tried.map(({ start, clock }) => [start, clock])).toEqual([[0, '07:30']]);
  });

  it('passes over every hour at which a roll gels before it lies, and none is left where all are so warm', () => {
    const slow: RepairCase = {
      ...waterTape,
      crew: { layingSpeed: speed.mPerMin(10 / 40), crews: 1, start: '07:30' },
    };
    const { best, tried } = bestStart(over(slow, hours(60, 34, 30)));
    expect(best).toBeUndefined();
    expect(tried.every(({ fits }) => !fits)).toBe(true);
  });
});

describe('a case that starts later', () => {
  const { crew: _, ...nobody } = planned;

  it('without a crew reads that hour of the forecast all the same', () => {
    const later = caseStartingAt(over(nobody, hours(5, 20, 60), hours(40, 15, 70)), time.hour(6));
    expect(later.crew).toBeUndefined();
    expect(later.site.pipeTemperature).toBe(temperature.degC(15));
    expect(later.title).toBe(planned.title);
    expect(later.site.forecast?.map(({ duration }) => duration)).toEqual([39 * 3600]);
  });

  it('without a forecast, or beyond the end of one, keeps the readings that it has', () => {
    const still = { ...planned.site, forecast: undefined };
    expect(caseStartingAt({ ...planned, site: still }, time.hour(6)).site).toEqual(still);
    const short = over(planned, hours(5, 20, 60));
    expect(caseStartingAt(short, time.hour(6)).site).toEqual(short.site);
  });

  it('forgets the hours that were foreseen from another start', () => {
    const foreseen: RepairCase = {
      ...over(planned, hours(30, 20, 60)),
      site: {
        ...over(planned, hours(30, 20, 60)).site,
        history: [{ duration: time.hour(99), temperature: temperature.degC(35) }],
      },
    };
    for (const start of [0 as Time, time.hour(3)]) expect(caseStartingAt(foreseen, start).site.history).toBeUndefined();
  });
});
