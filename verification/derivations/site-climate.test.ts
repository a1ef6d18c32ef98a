import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Ratio, Temperature, TemperatureDifference } from '../../src/quantity/index.js';
import { dewPointBand, steelMargin } from '../../src/site/index.js';
import { condensationByBisection, dewPointByBisection } from './vapour-oracles.js';

const settings = { seed: 20261125, numRuns: 60 };
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });

/** Highest and lowest of a function over a box of errors, by a grid of 21 by 21 points. */
function overBox(
  t: number,
  rh: number,
  dT: number,
  dRH: number,
  at: (celsius: number, humidity: number) => number,
): readonly [lowest: number, highest: number] {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = -10; i <= 10; i++) {
    for (let j = -10; j <= 10; j++) {
      const value = at(t + (i / 10) * dT, Math.min(1, rh + (j / 10) * dRH));
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
  }
  return [low, high];
}

describe('the climate at the pipe by another route', () => {
  it('site/dew-point-band: no pair of errors inside the box passes its ends', () => {
    fc.assert(
      fc.property(span(5, 40), span(0.25, 1), span(0, 1), span(0, 0.05), (t, rh, dT, dRH) => {
        const found = dewPointBand({
          temperature: (t + 273.15) as Temperature,
          humidity: rh as Ratio,
          temperatureError: dT as TemperatureDifference,
          humidityError: dRH as Ratio,
        });
        const [low, high] = overBox(t, rh, dT, dRH, dewPointByBisection);
        expect(Math.abs(found.highest - 273.15 - high)).toBeLessThan(1e-8);
        expect(Math.abs(found.lowest - 273.15 - low)).toBeLessThan(1e-8);
        expect(Math.abs(found.nominal - 273.15 - dewPointByBisection(t, rh))).toBeLessThan(1e-8);
      }),
      settings,
    );
  });

  it('site/steel-margin: the margin is the least over the box of errors, with frost below 0 degC', () => {
    fc.assert(
      fc.property(span(-10, 40), span(-5, 40), span(0.2, 1), span(0, 1), (steel, t, rh, error) => {
        const found = steelMargin({
          steelTemperature: (steel + 273.15) as Temperature,
          airTemperature: (t + 273.15) as Temperature,
          humidity: rh as Ratio,
          steelError: error as TemperatureDifference,
        });
        const [, high] = overBox(t, rh, 0.5, 0.03, condensationByBisection);
        expect(Math.abs(found.highestPoint - 273.15 - high)).toBeLessThan(1e-7);
        expect(Math.abs(found.worstMargin - (steel - error - high))).toBeLessThan(1e-7);
        expect(Math.abs(found.nominalMargin - (steel - condensationByBisection(t, rh)))).toBeLessThan(1e-7);
        expect(Math.abs(found.steelNeeded - 273.15 - (high + 3 + error))).toBeLessThan(1e-7);
        expect(found.isFrost).toBe(high < 0);
        if (Math.abs(found.worstMargin - 3) > 1e-6) expect(found.isEnough).toBe(steel - error - high >= 3);
      }),
      settings,
    );
  });
});
