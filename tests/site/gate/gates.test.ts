import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CalculationError } from '../../../src/formula/index.js';
import {
  type Line,
  length,
  type Ratio,
  ratio,
  type Time,
  temperature,
  temperatureDifference,
  time,
  written,
} from '../../../src/quantity/index.js';
import * as site from '../../../src/site/index.js';

const settings = { seed: 20261125, numRuns: 400 };
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
const RANK = { go: 0, wait: 1, stop: 2 } as const;

interface Hour {
  readonly air: number;
  readonly humidity: number;
  readonly steel: number;
}
const hours = (list: readonly Hour[]): site.WeatherHour[] =>
  list.map(({ air, humidity, steel }, index) => ({
    time: time.hour(index),
    airTemperature: temperature.degC(air),
    humidity: humidity as Ratio,
    steelTemperature: temperature.degC(steel),
  }));
const limits = { minimumTemperature: temperature.degC(5) };
/** A sentence of the gate as a reader of SI has it. */
const said = (sentence: Line | undefined): string =>
  sentence === undefined
    ? ''
    : written(sentence, ({ kind, value }) =>
        kind === 'time' ? `${value / 3600} h` : `${value.toFixed(2)} of ${kind}`,
      );
const gate = (list: readonly Hour[], hold = 2, more: Partial<site.WeatherGateInput> = {}): site.WeatherGate =>
  site.weatherGate({ ...limits, forecast: hours(list), holdTime: time.hour(hold), ...more });
const fine = { air: 20, humidity: 0.5, steel: 20 };
const damp = { air: 20, humidity: 0.95, steel: 20 };
const weather = fc.record({ air: span(0, 35), humidity: span(0.2, 1), steel: span(0, 45) });

describe('the weather gate', () => {
  it('finds the earliest start that trying every hour finds', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.boolean(), fc.integer({ min: 1, max: 4 })), { minLength: 1, maxLength: 25 }),
        span(0, 12),
        (drawn, hold) => {
          let at = 0;
          const forecast = drawn.map(([isFine, wait], index): site.WeatherHour => {
            at += index === 0 ? 0 : wait;
            const [hour] = hours([isFine ? fine : damp]) as [site.WeatherHour];
            return { ...hour, time: time.hour(at) };
          });
          const end = at - hold;
          const passes = (from: number): boolean =>
            forecast.every(({ time: here }, index) => {
              const before = forecast[index - 1]?.time ?? Number.NEGATIVE_INFINITY;
              const isInside = here >= from && before < from + time.hour(hold);
              return !isInside || (drawn[index]?.[0] ?? false);
            });
          const wanted = forecast.find(({ time: here }) => here <= time.hour(end) && passes(here));
          const found = site.weatherGate({ ...limits, forecast, holdTime: time.hour(hold) });
          expect(found.earliestStart).toBe(wanted?.time);
        },
      ),
      settings,
    );
  });

  it('says go in dry air on warm steel, with a reason for every check', () => {
    const { decision, earliestStart, reasons } = gate([fine, fine, fine, fine]);
    expect(decision).toBe('go');
    expect(earliestStart).toBe(0);
    expect(reasons.map(({ check }) => check)).toEqual([
      'steel above the dew point',
      'humidity of the air',
      'humidity at the steel',
      'steel not too cold for the resin',
      'no ice on the steel',
    ]);
    for (const { because, change } of reasons) {
      expect(because.text.length).toBeGreaterThan(10);
      expect(change.text.length).toBeGreaterThan(5);
    }
  });

  it('waits for the first hour from which the climate holds, and names it', () => {
    const { decision, earliestStart, reasons } = gate([damp, damp, fine, fine, fine]);
    expect(decision).toBe('wait');
    expect(earliestStart).toBe(time.hour(2));
    expect(said(reasons.find(({ check }) => check === 'humidity of the air')?.change)).toContain('start in 2 h');
  });

  it('stops when no hour of a forecast that is long enough will do', () => {
    const { decision, earliestStart, reasons } = gate([damp, damp, damp, damp]);
    expect(decision).toBe('stop');
    expect(earliestStart).toBeUndefined();
    expect(reasons.some((reason) => reason.decision === 'stop')).toBe(true);
  });

  it('a good hour before a bad one is no start: the climate must hold to the end', () => {
    expect(gate([fine, fine, damp, fine], 2).decision).not.toBe('go');
    expect(gate([fine, fine, damp, fine], 1).decision).toBe('go');
    expect(gate([fine, damp, fine], 0.5).decision).not.toBe('go');
  });

  it('a single reading can say go or wait, never stop', () => {
    expect(gate([fine], 0).decision).toBe('go');
    expect(gate([damp], 0).decision).toBe('wait');
  });

  it('a forecast shorter than the time to hold is no go', () => {
    const { decision, reasons } = gate([fine, fine], 8);
    expect(decision).toBe('wait');
    expect(reasons.find(({ check }) => check === 'forecast long enough')).toMatchObject({
      decision: 'wait',
      value: time.hour(1),
      limit: time.hour(8),
    });
  });

  it('judges the steel of a pipe with cold fluid, not the air', () => {
    const cold = { air: 25, humidity: 0.6, steel: 12 };
    const { reasons } = gate([cold], 0);
    const margin = reasons.find(({ check }) => check === 'steel above the dew point');
    expect(margin?.decision).toBe('wait');
    expect(said(margin?.change)).toMatch(/steel that reads at least 29\d\.\d\d of temperature/);
  });

  it('states frost', () => {
    const { reasons } = gate([{ air: 1, humidity: 0.7, steel: 1 }], 0);
    expect(reasons[0]?.check).toBe('steel above the frost point');
    expect(reasons[0]?.because.text).toContain('what settles is frost');
  });

  it('what would change it does: steel at the reading named passes the margin', () => {
    fc.assert(
      fc.property(weather, (now) => {
        const { steelNeeded } = site.steelMargin({
          steelTemperature: temperature.degC(now.steel),
          airTemperature: temperature.degC(now.air),
          humidity: now.humidity as Ratio,
        });
        const warmed = gate([{ ...now, steel: steelNeeded - 273.15 + 1e-6 }], 0);
        expect(warmed.reasons[0]?.decision).toBe('go');
      }),
      settings,
    );
  });

  it('worse weather never turns stop into go, nor makes any decision easier', () => {
    fc.assert(
      fc.property(
        fc.array(weather, { minLength: 1, maxLength: 8 }),
        span(0, 6),
        fc.array(fc.record({ warmer: span(0, 5), damper: span(0, 1), colder: span(0, 5) }), {
          minLength: 8,
          maxLength: 8,
        }),
        (list, hold, by) => {
          const worse = list.map(({ air, humidity, steel }, index) => ({
            air: air + (by[index]?.warmer ?? 0),
            humidity: humidity + (1 - humidity) * (by[index]?.damper ?? 0),
            steel: steel - (by[index]?.colder ?? 0),
          }));
          const [before, after] = [gate(list, hold), gate(worse, hold)];
          expect(RANK[after.decision]).toBeGreaterThanOrEqual(RANK[before.decision]);
          if (before.earliestStart === undefined) expect(after.earliestStart).toBeUndefined();
          else if (after.earliestStart !== undefined) {
            expect(after.earliestStart).toBeGreaterThanOrEqual(before.earliestStart);
          }
        },
      ),
      settings,
    );
  });

  it('a longer time to hold, a larger margin or a lower limit never makes it easier', () => {
    fc.assert(
      fc.property(fc.array(weather, { minLength: 4, maxLength: 8 }), span(0, 3), (list, hold) => {
        const before = RANK[gate(list, hold).decision];
        if (hold + 1 <= list.length - 1) {
          expect(gate(list, hold + 1).decision === 'go' ? 0 : 1).toBeGreaterThanOrEqual(Math.min(before, 1));
        }
        expect(
          RANK[gate(list, hold, { requiredMargin: temperatureDifference.kelvin(5) }).decision],
        ).toBeGreaterThanOrEqual(before);
        expect(RANK[gate(list, hold, { humidityLimit: ratio.percent(60) }).decision]).toBeGreaterThanOrEqual(before);
        expect(RANK[gate(list, hold, { steelHumidityLimit: ratio.percent(50) }).decision]).toBeGreaterThanOrEqual(
          before,
        );
        expect(RANK[gate(list, hold, { maximumTemperature: temperature.degC(25) }).decision]).toBeGreaterThanOrEqual(
          before,
        );
      }),
      settings,
    );
  });

  it('refuses an empty forecast, hours out of order and numbers that cannot be', () => {
    expect(() => gate([])).toThrow(/at least the reading of now/);
    const [first, second] = hours([fine, fine]);
    if (first === undefined || second === undefined) throw new Error('two hours were asked for');
    expect(() => site.weatherGate({ ...limits, forecast: [second, first], holdTime: time.hour(1) })).toThrow(
      /later than/,
    );
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, -1]) {
      expect(() => gate([fine, fine], 1, { holdTime: bad as Time })).toThrow(CalculationError);
      expect(() => gate([{ ...fine, humidity: bad }, fine], 1)).toThrow(CalculationError);
      expect(() => gate([{ ...fine, air: bad * 400 }, fine], 1)).toThrow(CalculationError);
      expect(() => gate([{ ...fine, steel: bad * 400 }, fine], 1)).toThrow(CalculationError);
      expect(() => gate([fine, fine], 1, { humidityLimit: bad as Ratio })).toThrow(CalculationError);
    }
  });
});

const surface: site.SurfaceGateInput = {
  requiredGrade: 'Sa 2 1/2',
  grade: 'Sa 2 1/2',
  requiredProfile: length.um(60),
  profile: length.um(70),
  isFreeOfOil: true,
  hasRustBloom: false,
  sincePreparation: time.hour(1),
  openTime: time.hour(4),
};
const mg = (value: number): NonNullable<site.SurfaceGateInput['saltLimit']> => (value / 1e6) as never;

describe('the weather gate beside its limits', () => {
  it('names no start where there is none, and refuses hours before now and limits that cross', () => {
    const none = gate([damp, damp, damp, damp]);
    expect(none.decision).toBe('stop');
    expect('earliestStart' in none).toBe(false);
    for (const { change } of none.reasons) expect(said(change)).not.toMatch(/or start/u);
    const early = hours([fine, fine]).map((hour, index) => ({ ...hour, time: time.hour(index - 1) }));
    expect(() => site.weatherGate({ ...limits, forecast: early, holdTime: time.hour(1) })).toThrow(
      expect.objectContaining({ parameter: 'forecast[0].time' }),
    );
    expect(() => gate([fine, fine, fine], 2, { maximumTemperature: temperature.degC(4) })).toThrow(
      expect.objectContaining({ parameter: 'maximumTemperature' }),
    );
  });
});

describe('limits to choose from', () => {
  it('say what they limit and by how much, and the steel is prepared to a grade that there is', () => {
    expect(site.climateLimits.map(({ what }) => what)).toContain('steel above the dew point');
    for (const { what, value } of site.climateLimits) expect(Math.min(what.length, value.length)).toBeGreaterThan(0);
    const [strict, light] = site.preparationByClass;
    expect(strict?.serves).toMatch(/every leak/u);
    expect(site.surfaceGradeMeets('Sa 3', strict?.grade as never)).toBe(true);
    expect(site.surfaceGradeMeets('Sa 2', strict?.grade as never)).toBe(false);
    expect(light?.serves).toMatch(/without a leak/u);
  });

  it('hand tools leave no profile, and a grade that is not known meets nothing', () => {
    for (const { method, leavesProfile } of site.surfaceGrades)
      if (method === 'hand or power tool') expect(leavesProfile).toBe(false);
    expect(site.surfaceGrade('Sa 1')?.leavesProfile).toBe(false);
    for (const bare of ['Sa 2', 'Sa 2 1/2', 'Sa 3', 'SP 11', 'SP 15'] as const)
      expect(site.surfaceGrade(bare)?.leavesProfile).toBe(true);
    expect(site.surfaceGrade('St 3')?.method).toBe('hand or power tool');
    expect(site.surfaceGradeMeets('Sa 9' as never, 'Sa 2')).toBe(false);
    expect(site.surfaceGradeMeets('Sa 2', 'Sa 9' as never)).toBe(false);
  });
});

describe('the surface gate', () => {
  it('goes with salts whose mean just keeps the limit at its worst, and says of how many readings', () => {
    const at = (...readings: number[]) =>
      site
        .surfaceGate({ ...surface, saltLimit: 2 as never, saltPrecision: 1 as never, saltReadings: readings as never })
        .reasons.find(({ check }) => check === 'soluble salts');
    expect(at(1)?.decision).toBe('go');
    expect(said(at(1)?.because)).toMatch(/^one reading is/u);
    expect(said(at(1, 1, 1, 1)?.because)).toMatch(/readings have a mean of/u);
  });

  it('says go on steel as it was in qualification', () => {
    expect(site.surfaceGate(surface).decision).toBe('go');
    expect(site.surfaceGate({ ...surface, grade: 'Sa 3' }).decision).toBe('go');
  });

  it('stops on any one fault and says what would change it', () => {
    const faults: Partial<site.SurfaceGateInput>[] = [
      { grade: 'Sa 2' },
      { grade: 'St 3' },
      { profile: length.um(59) },
      { isFreeOfOil: false },
      { hasRustBloom: true },
      { sincePreparation: time.hour(4.1) },
    ];
    for (const fault of faults) {
      const { decision, reasons } = site.surfaceGate({ ...surface, ...fault });
      expect(decision).toBe('stop');
      expect(reasons.filter((reason) => reason.decision === 'stop')).toHaveLength(1);
      expect(reasons.find((reason) => reason.decision === 'stop')?.change.text).toMatch(/prepare|blast|degrease/);
    }
  });

  it('does not compare grades of two methods', () => {
    expect(site.surfaceGradeMeets('Sa 3', 'St 2')).toBe(false);
    expect(site.surfaceGradeMeets('St 3', 'St 2')).toBe(true);
    expect(site.surfaceGradeMeets('SP 15', 'SP 11')).toBe(false);
    expect(site.surfaceGate({ ...surface, grade: 'St 3' }).reasons[0]?.because.text).toContain('not compared');
  });

  it('near a salt limit one reading decides nothing', () => {
    const of = (...readings: number[]): string =>
      site.surfaceGate({ ...surface, saltLimit: mg(20), saltReadings: readings.map(mg) }).decision;
    expect(of()).toBe('wait');
    expect(of(10)).toBe('go');
    expect(of(15)).toBe('wait');
    expect(of(25)).toBe('wait');
    expect(of(30)).toBe('stop');
    expect(of(15, 15, 15, 15)).toBe('go');
  });

  it('refuses words and numbers that cannot be', () => {
    expect(() => site.surfaceGate({ ...surface, grade: 'Sa 9' as never })).toThrow(/must be one of/);
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, -1]) {
      for (const name of ['profile', 'requiredProfile', 'sincePreparation', 'openTime', 'saltLimit'] as const) {
        expect(() => site.surfaceGate({ ...surface, [name]: bad })).toThrow(CalculationError);
      }
      expect(() => site.surfaceGate({ ...surface, saltLimit: mg(20), saltReadings: [bad as never] })).toThrow(
        CalculationError,
      );
    }
  });
});

describe('the site gate', () => {
  const weatherInput = { ...limits, forecast: hours([fine, fine, fine]), holdTime: time.hour(2) };

  it('is the harder of weather and steel', () => {
    expect(site.siteGate({ weather: weatherInput, surface }).decision).toBe('go');
    expect(site.siteGate({ weather: weatherInput, surface: { ...surface, isFreeOfOil: false } }).decision).toBe('stop');
    const wet = { ...weatherInput, forecast: hours([damp, fine, fine, fine]) };
    const waiting = site.siteGate({ weather: wet, surface });
    expect(waiting.decision).toBe('wait');
    expect(waiting.earliestStart).toBe(time.hour(1));
  });

  it('without prepared steel is no go', () => {
    const { decision, reasons } = site.siteGate({ weather: weatherInput });
    expect(decision).toBe('wait');
    expect(reasons.at(-1)?.check).toBe('steel prepared');
  });
});

describe('profile comparators', () => {
  it('grade a profile between their segments', () => {
    const grades = [20, 25, 59, 60, 99, 100, 149, 150].map((height) => site.profileGrade('grit', length.um(height)));
    expect(grades).toEqual(['below fine', 'fine', 'fine', 'medium', 'medium', 'coarse', 'coarse', 'above coarse']);
    expect(site.profileGrade('shot', length.um(40))).toBe('medium');
    expect(() => site.profileGrade('sand' as never, length.um(40))).toThrow(/grit, shot/);
  });
});
