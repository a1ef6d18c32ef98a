import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Ratio, type Time, temperature } from '../../../src/quantity/index.js';
import { type WeatherStretch, weatherHours } from '../../../src/site/index.js';

const climate = (degrees: number) => ({
  airTemperature: temperature.degC(degrees),
  humidity: 0.5 as Ratio,
  steelTemperature: temperature.degC(degrees),
});
const stretches = fc
  .array(fc.integer({ min: 1, max: 200_000 }), { minLength: 0, maxLength: 12 })
  .map((durations): WeatherStretch[] =>
    durations.map((duration, index) => ({ duration: duration as Time, ...climate(index + 1) })),
  );
const now = climate(0);

/** The stretch that holds at a second of the forecast, found by walking every second boundary. */
function holding(list: readonly WeatherStretch[], time: number): WeatherStretch | undefined {
  let end = 0;
  for (const stretch of list) {
    end += stretch.duration;
    if (time < end) return stretch;
  }
  return undefined;
}

describe('the hours at which a gate looks at a forecast', () => {
  it('rise, begin with the reading of now, and each shows the climate that holds at that time', () => {
    fc.assert(
      fc.property(stretches, (list) => {
        const [first, ...later] = weatherHours(now, list);
        expect(first).toEqual({ time: 0, ...now });
        let before = 0;
        for (const { time, ...seen } of later) {
          expect(time).toBeGreaterThan(before);
          const { duration: _, ...held } = holding(list, time) ?? { duration: 0 };
          expect(seen).toEqual(held);
          before = time;
        }
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });

  it('look at every stretch near its end, and at every one but the first at its start', () => {
    fc.assert(
      fc.property(stretches, (list) => {
        const times = weatherHours(now, list).map(({ time }) => time as number);
        let start = 0;
        for (const { duration } of list) {
          expect(times).toContain(start);
          const end = start + duration;
          expect(times.some((time) => time >= start && time < end && end - time <= 1)).toBe(true);
          start = end;
        }
        expect(times).toHaveLength(1 + Math.max(0, 2 * list.length - 1));
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });

  it('go over to the next stretch at the very second where the first one ends', () => {
    const list = [10, 20].map((degrees) => ({ duration: 3600 as Time, ...climate(degrees) }));
    const steelAt = (from: number) => weatherHours(now, list, from as Time)[0]?.steelTemperature;
    expect([3599, 3600].map(steelAt)).toEqual([temperature.degC(0), temperature.degC(20)]);
  });

  it('begin at a later gate with the climate that is foreseen for it, and leave out what is past', () => {
    fc.assert(
      fc.property(stretches, fc.integer({ min: 0, max: 300_000 }), (list, from) => {
        const [first, ...later] = weatherHours(now, list, from as Time);
        const held = holding(list, from);
        if (held === undefined && list.length > 0) {
          expect(first).toBeUndefined();
          return;
        }
        expect(first?.time).toBe(from);
        expect(first?.steelTemperature).toBe((held === list[0] ? now : held)?.steelTemperature);
        for (const { time, steelTemperature } of later) {
          expect(time).toBeGreaterThan(from);
          expect(steelTemperature).toBe(holding(list, time)?.steelTemperature);
        }
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });
});
