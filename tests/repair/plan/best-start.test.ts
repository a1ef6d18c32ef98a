import { describe, expect, it } from 'vitest';
import {
  type CorrosionRate,
  force,
  length,
  ratio,
  speed,
  type Time,
  temperature,
  time,
} from '../../../src/quantity/index.js';
import {
  bestStart,
  caseStartingAt,
  type DesignOptions,
  type ForecastStep,
  type RepairCase,
} from '../../../src/repair/index.js';
import { iso24817 } from '../../../src/rules/index.js';
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

  it('is an hour later where that brings the line back sooner: cooler resin goes on in fewer, larger batches', () => {
    // At 36 degC a batch lasts less than half as long as at 23, most of it goes into stirring, and each is stirred anew.
    const long: RepairCase = {
      ...planned,
      filler: 'none',
      defect: {
        ...planned.defect,
        cause: 'internal erosion',
        growth: { depth: 0 as CorrosionRate, length: 0 as CorrosionRate },
        axialLength: length.mm(900),
      },
    };
    const { best, tried } = bestStart(over(long, hours(1, 36, 25), hours(120, 20, 50)));
    const [hot, cool] = tried;
    expect([hot?.weather, hot?.fits, cool?.weather, cool?.fits]).toEqual(['go', true, 'go', true]);
    expect(cool?.notBackBefore).toBeLessThan(hot?.notBackBefore ?? 0);
    expect(best?.start).toBe(time.hour(1));
  });

  it('of a crew that nobody stated is none: nobody knows how long the air has to hold', () => {
    const { crew: _, ...nobody } = planned;
    const { best, tried } = bestStart(over(nobody, hours(60, 20, 55)));
    expect(best).toBeUndefined();
    for (const each of tried) {
      expect('clock' in each).toBe(false);
      expect(each.fits).toBe(true);
    }
  });

  it('is none where the repair is not designed, whatever the weather', () => {
    // Nobody says what keeps the carbon off the steel: all else is worked out, and the weather is good.
    const asking: RepairCase = { ...planned, laminate: { ...planned.laminate, fibre: 'carbon' } };
    const open = bestStart(over(asking, hours(60, 20, 55)));
    expect('best' in open).toBe(false);
    expect(open.tried[0]).toMatchObject({ verdict: 'needs input', weather: 'go' });
    const { best, tried } = bestStart(over({ ...planned, fitting: { kind: 'tee' } }, hours(30, 20, 55)));
    expect(best).toBeUndefined();
    expect(tried).toHaveLength(30);
    for (const { verdict, fits } of tried) expect([verdict, fits]).toEqual(['not covered', true]);
  });

  it('is none of a repair that a limit forbids, by the rules of the user too', () => {
    // One hour is tried, and what follows it is not foreseen.
    const short = over(planned, hours(1, 20, 55));
    const verdicts = (repairCase: RepairCase, options: DesignOptions = {}) =>
      bestStart(repairCase, options).tried.map(({ verdict }) => verdict);
    expect(verdicts(short)).toEqual(['needs input']);
    // Class 1 covers 10 bar.
    expect(verdicts({ ...short, repair: { ...short.repair, class: 1 } })).toEqual(['not repairable']);
    // A slender span that buckles under its push, which is found before any weather.
    const loads = { ...short.loads, axialForce: force.kN(-300), freeSpan: length.m(60) };
    expect(verdicts({ ...short, loads })).toEqual(['not repairable']);
    const longestLife = { ...iso24817.longestLife, value: time.year(10) };
    expect(verdicts(short, { rules: { ...iso24817, longestLife } })).toEqual(['not repairable']);
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
