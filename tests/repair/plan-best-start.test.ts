import { describe, expect, it } from 'vitest';
import { ratio, type Time, temperature, time } from '../../src/quantity/index.js';
import {
  bestStart,
  caseStartingAt,
  designRepair,
  type ForecastStep,
  planWork,
  type RepairCase,
} from '../../src/repair/index.js';
import { leastOf } from '../../src/repair/timeline/duration.js';
import { planned } from './plan-cases.js';

const step = (hours: number, steel: number, humidity: number): ForecastStep => ({
  duration: time.hour(hours),
  pipeTemperature: temperature.degC(steel),
  airTemperature: temperature.degC(steel),
  relativeHumidity: ratio.percent(humidity),
});
const withForecast = (...forecast: ForecastStep[]): RepairCase => {
  const { duration: _, ...now } = forecast[0] as ForecastStep;
  return { ...planned, site: { ...planned.site, ...now, forecast } };
};

describe('the best start', () => {
  it('is now where the weather is good all along', () => {
    const { best, tried } = bestStart(withForecast(step(72, 20, 55)));
    expect(best).toMatchObject({ start: 0, clock: '07:30', weather: 'go' });
    expect(tried.length).toBe(72);
  });

  it('waits for the first hour from which the air stays dry', () => {
    const { best } = bestStart(withForecast(step(5, 20, 92), step(80, 20, 55)));
    expect(best?.start).toBe(time.hour(5));
    expect(best?.clock).toBe('12:30');
  });

  it('is an hour from which all is in time, and no other such hour brings the line back sooner', () => {
    const repairCase = withForecast(step(8, 12, 70), step(90, 24, 50));
    const { best, tried } = bestStart(repairCase);
    const good = tried.filter(
      ({ verdict, weather, fits, notBackBefore }) =>
        verdict === 'designed' && weather === 'go' && fits && notBackBefore !== undefined,
    );
    expect(good.length).toBeGreaterThan(1);
    expect(best?.notBackBefore).toBe(Math.min(...good.map(({ notBackBefore }) => notBackBefore ?? 0)));
    // The same by the plan of the case as it stands at that hour.
    const plan = planWork(designRepair(caseStartingAt(repairCase, best?.start ?? (0 as Time))));
    expect((best?.start ?? 0) + leastOf(plan.earliestReturn)).toBeCloseTo(best?.notBackBefore ?? Number.NaN, 6);
  });

  it('is none where no hour will do', () => {
    const { best, tried } = bestStart(withForecast(step(72, 20, 95)));
    expect(best).toBeUndefined();
    expect(new Set(tried.map(({ weather }) => weather))).not.toContain('go');
  });

  it('is none where the forecast ends before the cure', () => {
    expect(bestStart(withForecast(step(6, 20, 55))).best).toBeUndefined();
  });

  it('passes over an hour at which the wrap would gel before it lies', () => {
    const slow = (repairCase: RepairCase): RepairCase => ({
      ...repairCase,
      resin: 'none',
      crew: { layingSpeed: (10 / 2400) as never, crews: 1, start: '07:30' },
    });
    const hotFirst = slow(withForecast(step(6, 34, 30), step(90, 18, 50)));
    const { best, tried } = bestStart(hotFirst);
    expect(tried[0]?.fits).toBe(false);
    expect(best?.start).toBe(time.hour(6));
  });
});

describe('a case that starts later', () => {
  const repairCase = withForecast(step(5, 20, 60), step(10, 15, 70), step(40, 18, 60));

  it('reads what the forecast says of that hour, and has the rest before it', () => {
    const { site, crew } = caseStartingAt(repairCase, time.hour(8));
    expect(site).toMatchObject({ pipeTemperature: temperature.degC(15), relativeHumidity: ratio.percent(70) });
    expect(site.forecast?.map(({ duration }) => duration / 3600)).toEqual([7, 40]);
    expect(crew?.start).toBe('15:30');
  });

  it('keeps its own readings when it starts now', () => {
    const now = { ...repairCase, site: { ...repairCase.site, pipeTemperature: temperature.degC(21) } };
    expect(caseStartingAt(now, 0 as Time).site.pipeTemperature).toBe(temperature.degC(21));
  });
});
