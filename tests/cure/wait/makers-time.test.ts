import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cureStages, type MakersRow, makersTime } from '../../../src/cure/index.js';
import { ratio, temperature, time } from '../../../src/quantity/index.js';

const settings = { seed: 20261125, numRuns: 300 };
const row = (celsius: number, percent: number, hours: number): MakersRow => ({
  temperature: temperature.degC(celsius),
  humidity: ratio.percent(percent),
  time: time.hour(hours),
});
const rows = [row(10, 50, 20), row(10, 85, 12), row(25, 50, 9), row(25, 85, 5), row(40, 85, 2)];
const at = (celsius: number, percent: number, purpose: 'wait' | 'working time') =>
  makersTime({ rows, temperature: temperature.degC(celsius), humidity: ratio.percent(percent), purpose });

describe('the maker’s own times', () => {
  it('between rows a wait takes the cooler, drier one and a working time the warmer, damper one', () => {
    expect(time.inHour(at(20, 70, 'wait').time)).toBe(20);
    expect(time.inHour(at(20, 70, 'working time').time)).toBe(5);
    expect(at(20, 70, 'wait').row).toBe(1);
    expect(at(20, 70, 'working time').row).toBe(4);
    expect(time.inHour(at(25, 85, 'wait').time)).toBe(5);
    expect(time.inHour(at(25, 85, 'working time').time)).toBe(5);
  });

  it('of rows alike it names the first', () => {
    const alike = [row(10, 50, 9), row(15, 50, 9), row(40, 85, 9)];
    for (const [purpose, first] of [
      ['wait', 1],
      ['working time', 3],
    ] as const)
      expect(
        makersTime({ rows: alike, temperature: temperature.degC(20), humidity: ratio.percent(50), purpose }).row,
      ).toBe(first);
  });

  it('nothing outside the tested temperatures and humidities', () => {
    for (const [celsius, percent] of [
      [9.9, 70],
      [40.1, 70],
      [20, 49],
      [20, 86],
    ] as const) {
      expect(() => at(celsius, percent, 'wait')).toThrow(/what the maker tested/);
      expect(() => at(celsius, percent, 'working time')).toThrow(/what the maker tested/);
    }
  });

  it('a corner that no row covers is refused even inside both spans', () => {
    const corner = [row(10, 85, 12), row(40, 50, 4)];
    expect(() =>
      makersTime({ rows: corner, temperature: temperature.degC(20), humidity: ratio.percent(70), purpose: 'wait' }),
    ).toThrow(/no warmer and no damper/);
  });

  it('rows that contradict each other are refused', () => {
    const odd = [row(10, 50, 8), row(25, 85, 9)];
    expect(() =>
      makersTime({ rows: odd, temperature: temperature.degC(15), humidity: ratio.percent(70), purpose: 'wait' }),
    ).toThrow(/cannot be chosen safely/);
    expect(() =>
      makersTime({ rows: [], temperature: temperature.degC(15), humidity: ratio.percent(70), purpose: 'wait' }),
    ).toThrow(/at least one/);
  });

  it('warmer or damper air never lengthens either', () => {
    const inside = { min: 0, max: 1, noNaN: true };
    fc.assert(
      fc.property(fc.double(inside), fc.double(inside), fc.double(inside), fc.double(inside), (a, b, c, d) => {
        const [cool, warm] = [10 + 30 * Math.min(a, b), 10 + 30 * Math.max(a, b)];
        const [dry, damp] = [50 + 35 * Math.min(c, d), 50 + 35 * Math.max(c, d)];
        for (const purpose of ['wait', 'working time'] as const) {
          expect(at(warm, damp, purpose).time).toBeLessThanOrEqual(at(cool, dry, purpose).time);
        }
      }),
      settings,
    );
  });
});

describe('stages of cure', () => {
  it('each names what releases its hold point beside the clock', () => {
    expect(cureStages.map(({ stage }) => stage)).toEqual(['no print', 'overcoat', 'handling', 'full cure']);
    for (const { releasedBy } of cureStages) expect(releasedBy).toMatch(/print|hardness|abraded/);
  });

  it('rows are refused where any two of them contradict each other, and the first two are named', () => {
    const few = fc.integer({ min: 1, max: 4 });
    const drawn = fc.array(fc.tuple(few, few, few), { minLength: 1, maxLength: 9 });
    const seen = { refused: 0, taken: 0 };
    const compare = (list: readonly (readonly [number, number, number])[]): void => {
      const given = list.map(([warmth, damp, hours]) => row(10 * warmth, 10 * damp, hours));
      const isAgainst = (i: number, j: number): boolean => {
        const [milder, harsher] = [list[i] ?? [0, 0, 0], list[j] ?? [0, 0, 0]];
        return harsher[0] >= milder[0] && harsher[1] >= milder[1] && harsher[2] > milder[2];
      };
      const pairs = list.flatMap((_, i) => list.map((__, j) => [i, j] as const));
      const first = pairs.find(([i, j]) => isAgainst(i, j));
      const [warmth, damp] = list[0] ?? [0, 0];
      const ask = () =>
        makersTime({
          rows: given,
          temperature: temperature.degC(10 * warmth),
          humidity: ratio.percent(10 * damp),
          purpose: 'wait',
        });
      if (first === undefined) expect(ask).not.toThrow();
      else expect(ask).toThrow(new RegExp(`rows\\[${first[1]}\\]\\.time.*rows\\[${first[0]}\\], which`, 'u'));
      seen[first === undefined ? 'taken' : 'refused']++;
    };
    fc.assert(fc.property(drawn, compare), { ...settings, numRuns: 1000 });
    expect(Math.min(seen.refused, seen.taken)).toBeGreaterThan(100);
  });

  it('a list of fifty thousand rows is answered, and one wrong row in it is found', () => {
    const many = Array.from({ length: 50_000 }, (_, index) => row(10 + (index % 250) / 10, 40 + index / 1250, 20));
    const asked = { temperature: temperature.degC(20), humidity: ratio.percent(60), purpose: 'wait' } as const;
    expect(time.inHour(makersTime({ rows: many, ...asked }).time)).toBe(20);
    const wrong = many.with(-1, row(34.9, 79.99, 21));
    expect(() => makersTime({ rows: wrong, ...asked })).toThrow(/rows\[49999\]\.time/u);
  });
});
