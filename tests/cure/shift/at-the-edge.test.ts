import { describe, expect, it } from 'vitest';
import * as cure from '../../../src/cure/index.js';
import { isCalculationError } from '../../../src/formula/index.js';

/** What holds at a limit itself: rates that do not rise, the coldest temperature that counts, numbers beyond any. */

type Given = Readonly<Record<string, unknown>>;
const R = 8.31446261815324;
const outcome = (compute: (given: never) => unknown, given: Given) => {
  try {
    return compute(given as never);
  } catch (error) {
    if (!isCalculationError(error)) throw error;
    return [error.code, error.parameter];
  }
};

describe('a pair of measurements', () => {
  const pair = { firstTemperature: 280, secondTemperature: 300 };

  it.each<readonly [string, (given: never) => unknown, Given, readonly [string, string]]>([
    [
      'rates alike',
      cure.activationEnergyFromRates,
      { ...pair, firstRate: 2, secondRate: 2 },
      ['outside-validity', 'secondRate'],
    ],
    [
      'times alike',
      cure.activationEnergyFromTimes,
      { ...pair, firstTime: 2, secondTime: 2 },
      ['outside-validity', 'secondTime'],
    ],
    ['a factor of one', cure.activationEnergyFromQ10, { factor: 1, temperature: 280 }, ['invalid-input', 'factor']],
    [
      'an energy beyond any number',
      cure.isoconversionalTime,
      {
        firstTime: 2,
        firstTemperature: 1e153,
        secondTime: 1,
        secondTemperature: 2e153,
        temperature: 1e153,
        gasConstant: 1e200,
      },
      ['invalid-input', 'firstTime'],
    ],
  ])('of %s is refused', (_, compute, given, refused) => {
    expect(outcome(compute, given)).toEqual(refused);
  });
});

describe('a line through measured rates', () => {
  const through = (...rows: readonly (readonly [temperature: number, rate: number])[]) =>
    cure.arrheniusFit({ rows: rows.map(([temperature, rate]) => ({ temperature, rate })) } as never);

  it.each([
    [
      'rates whose quotient is beyond any number',
      [
        [300, 1e-200],
        [310, 1e200],
      ],
      'rows[1].rate',
    ],
    [
      'rates whose quotient is nothing',
      [
        [310, 1e200],
        [300, 1e-200],
      ],
      'rows[1].rate',
    ],
    [
      'an energy beyond any number',
      [
        [1e305, 1],
        [0.5e305, 1e-304],
      ],
      'rows',
    ],
  ] as const)('is refused for %s', (_, rows, parameter) => {
    expect(() => through(...rows)).toThrow(expect.objectContaining({ code: 'invalid-input', parameter }));
  });

  it('is refused where it does not rise, with its slope over 1/T', () => {
    const flat = expect.objectContaining({ code: 'outside-validity', parameter: 'rows', value: 0 });
    expect(() => through([300, 2], [310, 2])).toThrow(flat);
    const slope = Math.log(2) / (1 / 300 - 1 / 310);
    expect(() => through([300, 2], [310, 1])).toThrow(
      expect.objectContaining({ code: 'outside-validity', value: expect.closeTo(slope, 6) }),
    );
    expect(() => through([300, 2])).toThrow(/1 long.*at least two rows/u);
    expect(through([300, 1], [310, 2]).activationEnergy).toBeCloseTo(slope * R, 6);
  });
});

describe('the temperature from which cure counts', () => {
  const mechanism = 'two-part reaction';
  const given = { referenceTemperature: 300, testedFrom: 295, testedTo: 305, minimumTemperature: 290, mechanism };
  const law = { ...given, activationEnergy: 50e3 };
  const history = (temperature: number) => ({ ...law, requiredTime: 60, steps: [{ duration: 3600, temperature }] });
  const ramp = (endTemperature: number) => ({ ...law, duration: 60, startTemperature: 280, endTemperature });
  const warmRamp = (startTemperature: number) => ({ ...law, duration: 60, startTemperature, endTemperature: 300 });
  const swing = (mean: number) => ({ ...law, duration: 60, meanTemperature: mean, swing: 8, sinceColdest: 0 });
  const [upTo, downTo] = [(highest: number) => swing(highest - 4), (lowest: number) => swing(lowest + 4)];

  it.each<readonly [string, (given: never) => boolean, (highest: number) => Given]>([
    ['a history', cure.equivalentTimeLeavesTestedSpan, history],
    ['a history that is waited for', cure.cureWaitOverHistoryLeavesTestedSpan, history],
    ['a ramp', cure.equivalentTimeRampLeavesTestedSpan, ramp],
    ['a swing', cure.equivalentTimeSwingLeavesTestedSpan, upTo],
    ['a swing that is waited for', cure.cureWaitOverSwingLeavesTestedSpan, upTo],
  ])('lets %s leave the tested span from it on, and nothing colder', (_, leaves, reaching) => {
    const at = (highest: number) => leaves(reaching(highest) as never);
    expect([at(289), at(290), at(294)]).toEqual([false, true, true]);
  });

  it.each<readonly [string, (given: never) => boolean, (lowest: number) => Given]>([
    ['a history', cure.equivalentTimeHasUncreditedTime, history],
    ['a history that is waited for', cure.cureWaitOverHistoryHasUncreditedTime, history],
    ['a ramp', cure.equivalentTimeRampHasUncreditedTime, warmRamp],
    ['a swing', cure.equivalentTimeSwingHasUncreditedTime, downTo],
    ['a swing that is waited for', cure.cureWaitOverSwingHasUncreditedTime, downTo],
  ])('leaves time of %s without credit below it, and not at it', (_, has, reaching) => {
    const at = (lowest: number) => has(reaching(lowest) as never);
    expect([at(289.9), at(290)]).toEqual([true, false]);
  });

  it('takes no time from a step that is too cold but does not last', () => {
    const steps = [0, 60].map((duration) => ({ duration, temperature: 280 }));
    for (const has of [cure.equivalentTimeHasUncreditedTime, cure.cureWaitOverHistoryHasUncreditedTime]) {
      expect(has({ ...law, steps: steps.slice(0, 1) } as never)).toBe(false);
      expect(has({ ...law, steps } as never)).toBe(true);
    }
  });

  it('credits the whole of a level ramp at it, and none of one below', () => {
    const level = (temperature: number) =>
      cure.equivalentTimeRamp({
        ...law,
        duration: 60,
        startTemperature: temperature,
        endTemperature: temperature,
      } as never);
    expect(level(290)).toMatchObject({ creditedTime: 60, uncreditedTime: 0 });
    expect(level(289.9)).toEqual({ equivalentTime: 0, creditedTime: 0, uncreditedTime: 60 });
  });

  it('refuses a history whose length is beyond any number', () => {
    const steps = [270, 300].map((temperature) => ({ duration: 1e308, temperature }));
    expect(() => cure.equivalentTime({ ...law, steps } as never)).toThrow(
      expect.objectContaining({ parameter: 'steps' }),
    );
  });

  it('counts a swing from its hour of the day, however many days after its coldest', () => {
    const from = (sinceColdest: number) =>
      cure.equivalentTimeSwing({ ...law, meanTemperature: 290, swing: 12, sinceColdest, duration: 130_000 } as never);
    const early = from(0.875 * 86_400);
    for (const days of [1, 7])
      expect(from((days + 0.875) * 86_400).equivalentTime / early.equivalentTime).toBeCloseTo(1, 9);
  });

  it('refuses a swing that reaches absolute zero', () => {
    const at = (width: number) => outcome(cure.equivalentTimeSwing, { ...swing(300), swing: width });
    expect(at(600)).toEqual(['invalid-input', 'swing']);
  });
});
