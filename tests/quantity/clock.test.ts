import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ClockTime, laterThan, onClock, readClock, sinceStart } from '../../src/quantity/clock.js';
import type { Time } from '../../src/quantity/index.js';

const read = (text: string): ClockTime => {
  const clock = readClock(text);
  if (clock === undefined) throw new Error(`${text} is no clock time`);
  return clock;
};

describe('a clock time', () => {
  it('is hours and minutes, with the number of its day before it where it names one', () => {
    expect(read('07:30')).toEqual({ seconds: 27_000, namesDay: false });
    expect(read('2 07:30')).toEqual({ seconds: 113_400, namesDay: true });
    expect(read(' 0:05 ')).toEqual({ seconds: 300, namesDay: false });
  });

  it.each(['25:00', 'noon', '7', '07:60', '0 07:30', ''])('is not read from %j', (text) => {
    expect(readClock(text)).toBeUndefined();
  });

  it('comes back from the text that it is written as', () => {
    const minutes = fc.integer({ min: 0, max: 20 * 1440 });
    fc.assert(
      fc.property(minutes, fc.integer({ min: 0, max: 1439 }), (after, at) => {
        const start = { seconds: at * 60, namesDay: false };
        const text = onClock(start, (after * 60) as Time).replace('day ', '');
        const named = text.includes(' ') ? text : `1 ${text}`;
        expect(sinceStart(read(named), start, 0 as Time)).toBe(after * 60);
      }),
      { seed: 20261125, numRuns: 200 },
    );
  });

  it('is written to the minute above, so that nobody starts too early', () => {
    expect(onClock(read('07:30'), 61 as Time)).toBe('07:32');
    expect(onClock(read('07:30'), 60.0000001 as Time)).toBe('07:31');
    expect(onClock(read('23:00'), 7200 as Time)).toBe('day 2 01:00');
  });

  it('without its day is the one nearest to what was planned', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1439 }), fc.integer({ min: 0, max: 500_000 }), (at, planned) => {
        const since = sinceStart({ seconds: at * 60, namesDay: false }, read('07:30'), planned as Time);
        expect(Math.abs(since - planned)).toBeLessThanOrEqual(43_200);
        expect((((since + 27_000 - at * 60) % 86_400) + 86_400) % 86_400).toBe(0);
      }),
      { seed: 20261125, numRuns: 200 },
    );
  });

  it('is earlier than the planned one unless it names its day', () => {
    expect(laterThan(read('07:30'), read('09:00'))).toBe(5400);
    expect(laterThan(read('07:30'), read('07:00'))).toBe(-1800);
    expect(laterThan(read('22:00'), read('2 01:00'))).toBe(10_800);
  });
});
