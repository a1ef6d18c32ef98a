import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as cure from '../../../src/cure/index.js';
import { activationEnergy, type Time, temperature, temperatureDifference, time } from '../../../src/quantity/index.js';

const settings = { seed: 20261125, numRuns: 200 };
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
const near = (found: number, wanted: number, relative = 1e-9): void => {
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(relative * Math.abs(wanted));
};
const sheet = {
  referenceTemperature: temperature.degC(23),
  testedFrom: temperature.degC(5),
  testedTo: temperature.degC(40),
  minimumTemperature: temperature.degC(5),
  activationEnergy: activationEnergy.kJPerMol(55),
  mechanism: 'two-part reaction',
} as const;
const { activationEnergy: _energy, ...unknownEnergy } = sheet;
const step = fc.record({ hours: span(0.1, 20), celsius: span(-5, 40) });
const steps = (list: readonly { hours: number; celsius: number }[]): cure.TemperatureStep[] =>
  list.map(({ hours, celsius }) => ({ duration: time.hour(hours), temperature: temperature.degC(celsius) }));
const history = fc.array(step, { minLength: 1, maxLength: 6 });

describe('equivalent time over steps', () => {
  it('of two histories in a row is the sum of theirs', () => {
    fc.assert(
      fc.property(history, history, (first, second) => {
        const of = (list: readonly { hours: number; celsius: number }[]) =>
          cure.equivalentTime({ ...sheet, steps: steps(list) });
        const [a, b, both] = [of(first), of(second), of([...first, ...second])];
        near(both.equivalentTime, a.equivalentTime + b.equivalentTime, 1e-12);
        near(both.creditedTime, a.creditedTime + b.creditedTime, 1e-12);
        near(both.uncreditedTime, a.uncreditedTime + b.uncreditedTime, 1e-12);
      }),
      settings,
    );
  });

  it('at the reference temperature is the clock time', () => {
    const found = cure.equivalentTime({
      ...sheet,
      steps: [{ duration: time.hour(7), temperature: temperature.degC(23) }],
    });
    expect(found).toEqual({ equivalentTime: time.hour(7), creditedTime: time.hour(7), uncreditedTime: 0 });
  });

  it('is under-counted when the temperature is averaged first', () => {
    fc.assert(
      fc.property(span(6, 20), span(1, 15), (celsius, by) => {
        const hours = 12;
        const swing = [
          { hours, celsius },
          { hours, celsius: celsius + by },
        ];
        const true_ = cure.equivalentTime({ ...sheet, steps: steps(swing) }).equivalentTime;
        const averaged = cure.equivalentTime({
          ...sheet,
          steps: steps([{ hours: 2 * hours, celsius: celsius + by / 2 }]),
        }).equivalentTime;
        expect(averaged).toBeLessThan(true_);
      }),
      settings,
    );
  });

  it('credits nothing below the minimum cure temperature and says how long that was', () => {
    const list = steps([
      { hours: 10, celsius: 4.9 },
      { hours: 2, celsius: 5 },
    ]);
    const found = cure.equivalentTime({ ...sheet, steps: list });
    expect(time.inHour(found.uncreditedTime)).toBe(10);
    expect(time.inHour(found.creditedTime)).toBe(2);
    expect(cure.equivalentTimeHasUncreditedTime({ ...sheet, steps: list })).toBe(true);
    expect(cure.equivalentTimeLeavesTestedSpan({ ...sheet, steps: list })).toBe(false);
    expect(cure.equivalentTimeLeavesTestedSpan({ ...sheet, steps: steps([{ hours: 1, celsius: 41 }]) })).toBe(true);
  });

  it('refuses an empty history and steps that cannot be', () => {
    expect(() => cure.equivalentTime({ ...sheet, steps: [] })).toThrow(/at least one step/);
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, -1]) {
      expect(() =>
        cure.equivalentTime({ ...sheet, steps: [{ duration: bad as Time, temperature: temperature.degC(20) }] }),
      ).toThrow(/steps\[0\].duration/);
    }
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, 0, -3]) {
      expect(() =>
        cure.equivalentTime({ ...sheet, steps: [{ duration: time.hour(1), temperature: temperature.kelvin(bad) }] }),
      ).toThrow(/steps\[0\].temperature/);
    }
  });
});

describe('equivalent time over a ramp and a swing', () => {
  it('a ramp up and the same ramp down are worth the same', () => {
    fc.assert(
      fc.property(span(-5, 40), span(-5, 60), (a, b) => {
        const ramp = (from: number, to: number) =>
          cure.equivalentTimeRamp({
            ...sheet,
            startTemperature: temperature.degC(from),
            endTemperature: temperature.degC(to),
            duration: time.hour(6),
          });
        expect(ramp(a, b)).toEqual(ramp(b, a));
      }),
      settings,
    );
  });

  it('a ramp is the limit of many steps', () => {
    const count = 4000;
    const list = Array.from({ length: count }, (_, i) => ({
      duration: time.minute(240 / count),
      temperature: temperature.degC(2 + ((i + 0.5) / count) * 30),
    }));
    const bySteps = cure.equivalentTime({ ...sheet, steps: list });
    const byRamp = cure.equivalentTimeRamp({
      ...sheet,
      startTemperature: temperature.degC(2),
      endTemperature: temperature.degC(32),
      duration: time.hour(4),
    });
    near(byRamp.equivalentTime, bySteps.equivalentTime, 1e-4);
    near(byRamp.uncreditedTime, time.hour(0.4), 1e-12);
  });

  it('a ramp that stays at one temperature is a step', () => {
    const flat = cure.equivalentTimeRamp({
      ...sheet,
      startTemperature: temperature.degC(14),
      endTemperature: temperature.degC(14),
      duration: time.hour(4),
    });
    const one = cure.equivalentTime({
      ...sheet,
      steps: [{ duration: time.hour(4), temperature: temperature.degC(14) }],
    });
    near(flat.equivalentTime, one.equivalentTime, 1e-13);
  });

  it('a swing is worth at least its mean temperature while no hour is too cold', () => {
    fc.assert(
      fc.property(span(17, 35), span(0, 20), span(0, 24), (mean, swing, since) => {
        const { equivalentTime, uncreditedTime } = cure.equivalentTimeSwing({
          ...sheet,
          meanTemperature: temperature.degC(mean),
          swing: temperatureDifference.kelvin(swing),
          sinceColdest: time.hour(since),
          duration: time.hour(72),
        });
        const atMean = cure.equivalentTime({
          ...sheet,
          steps: [{ duration: time.hour(72), temperature: temperature.degC(mean) }],
        }).equivalentTime;
        expect(uncreditedTime).toBeLessThan(1e-6);
        expect(equivalentTime).toBeGreaterThanOrEqual(atMean * (1 - 1e-10));
      }),
      settings,
    );
  });

  it('two swings in a row are the swing of both', () => {
    fc.assert(
      fc.property(span(6, 30), span(0, 20), span(0, 24), span(1, 50), span(1, 50), (mean, swing, since, a, b) => {
        const of = (from: number, hours: number): number =>
          cure.equivalentTimeSwing({
            ...sheet,
            meanTemperature: temperature.degC(mean),
            swing: temperatureDifference.kelvin(swing),
            sinceColdest: time.hour(from),
            duration: time.hour(hours),
          }).equivalentTime;
        near(of(since, a + b), of(since, a) + of(since + a, b), 1e-8);
      }),
      settings,
    );
  });

  it('a swing colder than the minimum all day counts nothing and is never cured', () => {
    const cold = {
      ...sheet,
      meanTemperature: temperature.degC(0),
      swing: temperatureDifference.kelvin(8),
      sinceColdest: time.hour(0),
    };
    expect(cure.equivalentTimeSwing({ ...cold, duration: time.hour(30) })).toMatchObject({ equivalentTime: 0 });
    expect(() => cure.cureWaitOverSwing({ ...cold, requiredTime: time.hour(24) })).toThrow(/heat the pipe/);
    expect(cure.equivalentTimeSwingHasUncreditedTime({ ...cold, duration: time.hour(30) })).toBe(true);
    expect(cure.equivalentTimeSwingLeavesTestedSpan({ ...cold, duration: time.hour(30) })).toBe(false);
  });

  it('a swing below absolute zero is refused', () => {
    expect(() =>
      cure.equivalentTimeSwing({
        ...sheet,
        meanTemperature: temperature.kelvin(100),
        swing: temperatureDifference.kelvin(250),
        sinceColdest: time.hour(0),
        duration: time.hour(1),
      }),
    ).toThrow(/absolute zero/);
  });
});

describe('the hour at which a history is done', () => {
  it('has gained exactly what is required', () => {
    fc.assert(
      fc.property(history, span(0.05, 0.95), (list, share) => {
        const total = cure.equivalentTime({ ...sheet, steps: steps(list) }).equivalentTime;
        fc.pre(total > 60);
        const requiredTime = (total * share) as Time;
        const { wait, step: at } = cure.cureWaitOverHistory({ ...sheet, steps: steps(list), requiredTime });
        const before = steps(list).slice(0, at - 1);
        const clock = before.reduce((sum, { duration }) => sum + duration, 0);
        const last = steps(list)[at - 1];
        if (last === undefined) throw new Error(`there is no step ${at}`);
        const upTo = [...before, { duration: (wait - clock) as Time, temperature: last.temperature }];
        near(cure.equivalentTime({ ...sheet, steps: upTo }).equivalentTime, requiredTime, 1e-9);
      }),
      settings,
    );
  });

  it('never comes later when every step is warmer', () => {
    fc.assert(
      fc.property(history, span(0, 15), (list, by) => {
        const long = [...list, { hours: 5000, celsius: 20 }];
        const warmer = long.map(({ hours, celsius }) => ({ hours, celsius: celsius + by }));
        const wait = (of: typeof long): number =>
          cure.cureWaitOverHistory({ ...unknownEnergy, steps: steps(of), requiredTime: time.hour(24) }).wait;
        expect(wait(warmer)).toBeLessThanOrEqual(wait(long) * (1 + 1e-12));
      }),
      settings,
    );
  });

  it('at one temperature is the wait at that temperature, over steps and over a swing of nothing', () => {
    fc.assert(
      fc.property(span(5, 40), (celsius) => {
        const wanted = cure.cureWait({ ...unknownEnergy, time: time.hour(24), temperature: temperature.degC(celsius) });
        const bySteps = cure.cureWaitOverHistory({
          ...unknownEnergy,
          steps: steps([{ hours: 2000, celsius }]),
          requiredTime: time.hour(24),
        });
        const bySwing = cure.cureWaitOverSwing({
          ...unknownEnergy,
          meanTemperature: temperature.degC(celsius),
          swing: temperatureDifference.kelvin(0),
          sinceColdest: time.hour(5),
          requiredTime: time.hour(24),
        });
        near(bySteps.wait, wanted.wait, 1e-12);
        near(bySwing.wait, wanted.wait, 1e-10);
        expect(bySwing.governingEnergy).toBe(wanted.governingEnergy);
      }),
      { ...settings, numRuns: 60 },
    );
  });

  it('is refused with what was reached when the history ends before', () => {
    expect(() =>
      cure.cureWaitOverHistory({
        ...sheet,
        steps: steps([{ hours: 3, celsius: 20 }]),
        requiredTime: time.hour(24),
      }),
    ).toThrow(/must reach an equivalent time of 86400 s and ends before/);
  });

  it('warns of cold hours and of the tested span', () => {
    const cold = steps([
      { hours: 3, celsius: 1 },
      { hours: 300, celsius: 20 },
    ]);
    const input = { ...sheet, steps: cold, requiredTime: time.hour(24) };
    expect(cure.cureWaitOverHistoryHasUncreditedTime(input)).toBe(true);
    expect(cure.cureWaitOverHistoryLeavesTestedSpan(input)).toBe(false);
    expect(
      cure.cureWaitOverHistoryLeavesTestedSpan({
        ...input,
        testedTo: temperature.degC(23),
        testedFrom: temperature.degC(21),
      }),
    ).toBe(true);
    const swing = {
      ...sheet,
      meanTemperature: temperature.degC(20),
      swing: temperatureDifference.kelvin(10),
      sinceColdest: time.hour(0),
    };
    expect(cure.cureWaitOverSwingHasUncreditedTime({ ...swing, requiredTime: time.hour(1) })).toBe(false);
    expect(cure.cureWaitOverSwingLeavesTestedSpan({ ...swing, requiredTime: time.hour(1) })).toBe(false);
    expect(
      cure.cureWaitOverSwingLeavesTestedSpan({
        ...swing,
        swing: temperatureDifference.kelvin(42),
        requiredTime: time.hour(1),
      }),
    ).toBe(true);
  });
});

describe('the Arrhenius line through measured rates', () => {
  it('has the intercept of the published shelf-life answer', () => {
    const rows = [
      { temperature: temperature.kelvin(298), rate: 0.0562 as never },
      { temperature: temperature.kelvin(308), rate: 0.0592 as never },
      { temperature: temperature.kelvin(318), rate: 0.0701 as never },
    ];
    near(Math.log(cure.arrheniusFit({ rows }).frequencyFactor), 0.5937813446, 1e-9);
  });

  it('refuses one row, one temperature, and rates that fall', () => {
    const row = (celsius: number, rate: number): cure.MeasuredRate => ({
      temperature: temperature.degC(celsius),
      rate: rate as never,
    });
    expect(() => cure.arrheniusFit({ rows: [row(20, 1)] })).toThrow(/at least two rows/);
    expect(() => cure.arrheniusFit({ rows: [row(20, 1), row(20, 2)] })).toThrow(/two different temperatures/);
    expect(() => cure.arrheniusFit({ rows: [row(20, 2), row(30, 1)] })).toThrow(/rise with temperature/);
    expect(() => cure.arrheniusFit({ rows: [row(20, 2), row(30, Number.NaN)] })).toThrow(/rows\[1\].rate/);
  });
});
