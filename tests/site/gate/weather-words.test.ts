import { describe, expect, it } from 'vitest';
import { type Line, type Ratio, type Time, temperature, time } from '../../../src/quantity/index.js';
import { checkHour } from '../../../src/site/gate/weather-check.js';
import * as site from '../../../src/site/index.js';

/** What the gate of the weather says: by which number each check is judged, what would turn it, and when. */

const climate = (steel: number, air: number, humidity: number) => ({
  airTemperature: temperature.degC(air),
  humidity: humidity as Ratio,
  steelTemperature: temperature.degC(steel),
});
const fine = climate(20, 20, 0.5);
const damp = climate(20, 20, 0.95);
const minimumTemperature = temperature.degC(5);
const gate = (list: readonly ReturnType<typeof climate>[], hold: number, first = 0): site.WeatherGate =>
  site.weatherGate({
    minimumTemperature,
    forecast: list.map((each, index) => ({ ...each, time: time.hour(first + index) })),
    holdTime: time.hour(hold),
  });
const amountsOf = ({ amounts = [] }: Line) => Object.fromEntries(amounts.map(({ name, value }) => [name, value]));

describe('a check of one hour', () => {
  const instruments = { steelError: 0.75, temperatureError: 1.25, humidityError: 0.04 } as never;
  const hour = climate(20, 18, 0.8);
  const exact = { steelError: 0, temperatureError: 0, humidityError: 0 } as never;

  const temperatures = (given: object) =>
    checkHour(hour, { minimumTemperature, maximumTemperature: temperature.degC(30), ...given })
      .slice(3)
      .map(({ check, excess, value, words }) => {
        const { because, change } = words();
        return [check, excess, value, amountsOf(because), amountsOf(change)];
      });

  it.each([
    ['as stated', instruments, 0.75],
    ['half a kelvin where nothing is stated', {}, 0.5],
  ])('takes the steel off by what its thermometer may be off, %s', (_, given, off) => {
    const close = (value: number) => expect.closeTo(value, 9);
    const [cold, hot] = [293.15 - off, 293.15 + off];
    expect(temperatures(given)).toEqual([
      [
        'steel not too cold for the resin',
        close(278.15 - cold),
        close(cold),
        { 'coldest steel': close(cold), 'lowest temperature for the resin': close(278.15) },
        { 'least reading of the steel': close(278.15 + off) },
      ],
      [
        'no ice on the steel',
        close(273.15 - cold),
        close(cold),
        { 'coldest steel': close(cold), freezing: 273.15 },
        {},
      ],
      [
        'steel not too hot for the resin',
        close(hot - 303.15),
        close(hot),
        { 'hottest steel': close(hot), 'highest temperature for the resin': close(303.15) },
        { 'highest reading of the steel': close(303.15 - off) },
      ],
    ]);
  });

  it.each([
    ['as stated', instruments],
    ['as they are taken where nothing is stated', {}],
    ['without error', exact],
  ])('names the humidity at which the air would just do, with instruments %s', (_, given) => {
    const limits = { minimumTemperature, ...given };
    const [margin] = checkHour(climate(20, 22, 0.85), limits);
    const dry =
      amountsOf((margin as ReturnType<typeof checkHour>[number]).words().change)['humidity to dry to'] ?? Number.NaN;
    expect(dry).toBeLessThan(0.85);
    expect(checkHour(climate(20, 22, dry), limits)[0]?.excess).toBeCloseTo(0, 9);
  });

  it.each([
    ['where steel stands by the margin above air that could be no damper', climate(20, 17, 0.5)],
    ['where the dew point would have to be at freezing', climate(3, 20, 0.9)],
  ])('does not send for drier air %s', (_, at) => {
    const [margin] = checkHour(at, { minimumTemperature, ...(exact as object) });
    expect(margin?.words().change.text).not.toContain('dry the air');
  });
});

describe('the gate of the weather', () => {
  it('lets work start at the very limit of the humidity', () => {
    const { decision, earliestStart } = gate([climate(30, 20, 0.85), climate(30, 20, 0.85)], 1);
    expect(decision).toBe('go');
    expect(earliestStart).toBe(0);
  });

  it('waits for a longer forecast, and stops at nothing that a longer one could turn', () => {
    const { decision, reasons } = gate([damp, damp], 8);
    expect(decision).toBe('wait');
    expect(reasons.map((reason) => reason.decision)).not.toContain('stop');
    expect(reasons.at(-1)?.change.text).toMatch(/forecast that reaches/u);
  });

  it('looks over the hours behind a gate that stands later than now', () => {
    expect(gate([fine, damp, fine], 2, 10).decision).toBe('stop');
    expect(gate([fine, fine], 8, 10).reasons.at(-1)).toMatchObject({ value: 3600, limit: 8 * 3600 });
  });

  it('tells of each check the first of the worst hours, and only of one that fails when to start', () => {
    const { reasons } = gate([fine, fine, damp, damp, fine, fine, fine], 2);
    const found = reasons.map(({ check, because, change }) => [
      check,
      because.text,
      amountsOf(because)['time from now'],
      amountsOf(change)['time from now'],
    ]);
    expect(found).toEqual([
      ['steel above the dew point', expect.stringMatching(/^in \{0\}: /u), 7200, 4 * 3600],
      ['humidity of the air', expect.stringMatching(/^in \{0\}: /u), 7200, 4 * 3600],
      ['humidity at the steel', expect.stringMatching(/^in \{0\}: /u), 7200, 4 * 3600],
      ['steel not too cold for the resin', expect.stringMatching(/^now: /u), undefined, undefined],
      ['no ice on the steel', expect.stringMatching(/^now: /u), undefined, undefined],
    ]);
  });

  it.each([
    ['before now', [-1, 1], 0],
    ['that is none', [0, Number.POSITIVE_INFINITY], 1],
    ['that is no later than the one in front of it', [0, 0], 1],
  ])('refuses an hour %s', (_, hours, at) => {
    const forecast = hours.map((each) => ({ ...fine, time: each as Time }));
    expect(() => site.weatherGate({ minimumTemperature, forecast, holdTime: time.hour(0) })).toThrow(
      `forecast[${at}].time`,
    );
  });

  it('with the steel names no start where there is none', () => {
    const weather = {
      minimumTemperature,
      forecast: [0, 1, 2].map((hour) => ({ ...damp, time: time.hour(hour) })),
      holdTime: time.hour(1),
    };
    const found = site.siteGate({ weather });
    expect(found.decision).toBe('stop');
    expect('earliestStart' in found).toBe(false);
    expect(found.reasons.at(-1)).toMatchObject({
      because: { text: expect.stringMatching(/not been looked at yet$/u) },
      change: { text: expect.stringMatching(/^prepare the steel/u) },
    });
  });
});
