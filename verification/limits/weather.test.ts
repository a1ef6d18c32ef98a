import { describe, expect, it } from 'vitest';
import { type Ratio, type Temperature, type Time, temperature } from '../../src/quantity/index.js';
import { checkHour, checkWeatherLimits } from '../../src/site/gate/weather-check.js';
import { weatherHours } from '../../src/site/gate/weather-hours.js';

/** What the gate of the weather takes where its limits are left open, and where its advice ends. */

const hour = (steel: number, air: number, humidity: number) => ({
  time: 0 as Time,
  airTemperature: temperature.degC(air),
  humidity: humidity as Ratio,
  steelTemperature: temperature.degC(steel),
});
const limits = { minimumTemperature: temperature.degC(5) };
const exact = { ...limits, steelError: 0, temperatureError: 0, humidityError: 0 } as never;
const checkNamed = (name: RegExp, checks: ReturnType<typeof checkHour>) => {
  const found = checks.find(({ check }) => name.test(check));
  if (found === undefined) throw new Error(`no check ${name}`);
  return found;
};

describe('the gate of the weather', () => {
  it('allows 85 per cent in the air and at the steel where nothing else is said', () => {
    expect(checkNamed(/^humidity of the air$/u, checkHour(hour(20, 20, 0.8), limits)).limit).toBe(0.85);
    expect(checkNamed(/^humidity at the steel$/u, checkHour(hour(20, 20, 0.8), limits)).limit).toBe(0.85);
  });

  it('refuses limits of humidity above saturation', () => {
    for (const name of ['humidityLimit', 'steelHumidityLimit']) {
      const at = (value: number) => () => checkWeatherLimits({ ...limits, [name]: value } as never);
      expect(at(1 - 1e-9)).not.toThrow();
      expect(at(1 + 1e-9)).toThrow(`${name} is`);
    }
  });

  it('judges steel at 0 degC as ice, less what its thermometer may be off', () => {
    const excess = (error: number): number | undefined =>
      checkHour(hour(1, 1, 0.5), { ...limits, steelError: error } as never)
        .filter(({ limit }) => Math.abs(limit - 273.15) < 1e-9)
        .map((check) => check.excess)[0];
    expect(excess(0.5)).toBeCloseTo(-0.5, 9);
    expect(excess(1.5)).toBeCloseTo(0.5, 9);
  });

  const advice = (steel: number, air: number): string =>
    checkNamed(/^steel above/u, checkHour(hour(steel, air, 0.9), exact)).words().change.text;

  it('advises to dry the air where the margin then needs a dew point above freezing', () => {
    expect(advice(3.001, 20)).toContain('dry the air');
    expect(advice(2.999, 20)).not.toContain('dry the air');
  });

  it('does not advise air of less than 5 per cent, which nobody can make', () => {
    // The dew point of air of 55 degC at 5 per cent; the steel stands 3 K above it.
    const g = Math.log(0.05) + (17.62 * 55) / (243.12 + 55);
    const steel = (243.12 * g) / (17.62 - g) + 3;
    expect(advice(steel + 0.001, 55)).toContain('dry the air');
    expect(advice(steel - 0.001, 55)).not.toContain('dry the air');
  });

  it('looks at a short stretch of a forecast in its middle, and at another one second before its end', () => {
    const now = { airTemperature: 290 as Temperature, humidity: 0.5 as Ratio, steelTemperature: 290 as Temperature };
    const times = (duration: number): number[] =>
      weatherHours(now, [{ duration: duration as Time, ...now } as never]).map(({ time }) => time);
    expect(times(3600)).toEqual([0, 3599]);
    expect(times(1.5)).toEqual([0, 0.75]);
    expect(times(2.5)).toEqual([0, 1.5]);
  });
});
