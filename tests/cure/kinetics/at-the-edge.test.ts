import { describe, expect, it } from 'vitest';
import * as cure from '../../../src/cure/index.js';
import {
  type ActivationEnergy,
  type RateConstant,
  type Ratio,
  rateConstant,
  type Temperature,
  type Time,
} from '../../../src/quantity/index.js';

const r = (value: number): Ratio => value as Ratio;
const near = (found: number, wanted: number, relative = 1e-9): void => {
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(relative * Math.abs(wanted));
};
const held = (kelvin: number, seconds: number) =>
  [0, seconds].map((at) => ({ time: at as Time, temperature: kelvin as Temperature }));
const k = rateConstant.perS(1);
/** A law without temperature: one per second. */
const steady = { frequencyFactor: k, activationEnergy: 1e-300 as ActivationEnergy };

describe('a law of cure at the edge of its span', () => {
  it('that needs a start begins from any, and one that needs none from nothing', () => {
    const time = 0.7 as Time;
    const first = cure.nthOrderConversion({ rateConstant: k, order: 1, time });
    near(cure.autocatalyticConversion({ rateConstant: k, m: 0, n: 1, startConversion: r(0), time }), first);
    near(cure.degreeOfCureByLaw({ law: 'autocatalytic', ...steady, m: 0, n: 1 }, held(300, 0.7), r(0)), first);
    // Of a (1 - a) the odds grow by e in each second.
    const logistic = { law: 'autocatalytic', ...steady, m: 1, n: 1 } as const;
    near(cure.degreeOfCureByLaw(logistic, held(300, Math.log(9)), r(0.1)), 0.5);
    const kamal = { firstRate: rateConstant.perS(0), secondRate: k, m: 1, n: 1, conversion: r(0.5) };
    expect(() => cure.kamalTime({ ...kamal, startConversion: r(0) })).toThrow(/never starts by itself/u);
    near(cure.kamalTime({ ...kamal, startConversion: r(0.1) }), Math.log(9));
  });

  it.each<readonly [string, (start: Ratio, end: Ratio) => Time]>([
    [
      'autocatalytic',
      (startConversion, conversion) =>
        cure.autocatalyticTime({ rateConstant: k, m: 1, n: 1, startConversion, conversion }),
    ],
    [
      'closed',
      (startConversion, conversion) =>
        cure.autocatalyticTimeClosed({ rateConstant: k, m: 1, startConversion, conversion }),
    ],
    [
      'Kamal',
      (startConversion, conversion) =>
        cure.kamalTime({ firstRate: k, secondRate: k, m: 1, n: 1, startConversion, conversion }),
    ],
  ])('takes no time to where it stands, and never goes back: %s', (_, timeFrom) => {
    expect(timeFrom(r(0.5), r(0.5))).toBe(0);
    expect(() => timeFrom(r(0.5), r(0.4))).toThrow(
      expect.objectContaining({ code: 'invalid-input', parameter: 'conversion', value: 0.4 }),
    );
  });

  it('does not start from full cure, nor last longer than a number holds', () => {
    const full = expect.objectContaining({ code: 'invalid-input', parameter: 'startConversion' });
    const law = { rateConstant: 1e200 as RateConstant, m: 0, n: 1, startConversion: r(0.1) };
    expect(() => cure.degreeOfCureByLaw({ law: 'n-th order', ...steady, n: 1 }, held(300, 60), r(1))).toThrow(full);
    expect(() => cure.autocatalyticConversion({ ...law, startConversion: r(1), time: 1 as Time })).toThrow(full);
    expect(() => cure.autocatalyticConversion({ ...law, time: 1e200 as Time })).toThrow(
      expect.objectContaining({ code: 'invalid-input', parameter: 'time' }),
    );
  });

  it('goes by its second branch from the very switch on, and stalls where the first would go back', () => {
    const k3 = (1.96e5 / 60) * Math.exp(-56600 / (8.31446261815324 * 275));
    const from = (startConversion: number) =>
      cure.degreeOfCure({
        parameterSet: 'two-branch epoxy',
        programme: held(275, 1e7),
        startConversion: r(startConversion),
      });
    near(from(0.3), 1 - 0.7 * Math.exp(-k3 * 1e7));
    expect(() => from(0.298)).toThrow(/stalls/u);
  });

  it('that is 2^40 times as fast takes just 2^-40 of the time', () => {
    const law = { m: 0.5, n: 1.5, startConversion: r(0.01), conversion: r(0.9) };
    const slow = cure.autocatalyticTime({ ...law, rateConstant: k });
    expect(cure.autocatalyticTime({ ...law, rateConstant: rateConstant.perS(2 ** 40) })).toBe(slow / 2 ** 40);
  });

  it.each([
    [1e-100, 0.9],
    [0.01, 1 - 2 ** -40],
    [1e-100, 1 - 2 ** -40],
  ])('is summed to all digits from %d to %d, and followed there', (startConversion, conversion) => {
    const law = { rateConstant: k, m: 1, startConversion: r(startConversion) };
    const time = cure.autocatalyticTimeClosed({ ...law, conversion: r(conversion) });
    near(cure.autocatalyticTime({ ...law, n: 1, conversion: r(conversion) }), time, 1e-11);
    near(1 - cure.autocatalyticConversion({ ...law, n: 1, time }), 1 - conversion, 1e-4);
  });

  it('of the fifth order is summed to all digits too', () => {
    const law = { rateConstant: k, m: 0, n: 5, startConversion: r(0.5), conversion: r(0.999) };
    near(cure.autocatalyticTime(law), (0.001 ** -4 - 0.5 ** -4) / 4, 1e-11);
  });

  it('is followed through the end of each part that it is summed in, and is complete once 2e-16 is left', () => {
    const law = { rateConstant: rateConstant.perS(3), m: 0, n: 1, startConversion: r(0) };
    const reached = (seconds: number) => cure.autocatalyticConversion({ ...law, time: seconds as Time });
    let clock = 0;
    for (let part = 1; part <= 100; part++) {
      clock += 0.25 / 3;
      near(reached(clock), -Math.expm1(-3 * clock), 1e-12);
    }
    expect(reached(35.9 / 3)).toBeLessThan(1);
    expect(reached(36.1 / 3)).toBe(1);
  });

  it('is followed from a start that is a thousand million times as fast as its end', () => {
    const second = { law: 'n-th order', ...steady, n: 2 } as const;
    const left = 1 - cure.degreeOfCureByLaw(second, held(300, 1e9), r(0));
    near(left, 1 / (1 + 1e9), 1e-5);
  });

  it('stays where it is in no time, and where it is too cold for any rate', () => {
    const first = { law: 'n-th order', ...steady, n: 1 } as const;
    const corner = (time: number, kelvin: number) => ({ time: time as Time, temperature: kelvin as Temperature });
    const jump = [corner(0, 300), corner(0.35, 300), corner(0.35, 400), corner(0.7, 400)];
    near(cure.degreeOfCureByLaw(first, jump, r(0)), -Math.expm1(-0.7));
    const asleep = { ...first, activationEnergy: 1e6 as ActivationEnergy };
    near(cure.degreeOfCureByLaw(asleep, held(1, 1e6), r(0.25)), 0.25, 1e-15);
  });

  it('whose rate is beyond any number is refused, not done in no time', () => {
    const beyond = Number.MAX_VALUE as RateConstant;
    const law = { firstRate: beyond, secondRate: beyond, m: 0, n: 1, startConversion: r(0.1), conversion: r(0.5) };
    expect(() => cure.kamalTime(law)).toThrow(
      expect.objectContaining({ code: 'no-solution', value: expect.closeTo(0.1, 12) }),
    );
  });

  it('needs no heat after the cure where the site is just as warm as it has to be', () => {
    const site = { uncuredTransition: 250, fullTransition: 350, lambda: 0.5, targetConversion: 1, excess: 10 };
    const needs = (cureTemperature: number) =>
      cure.requiredCureTemperatureNeedsPostHeat({ ...site, cureTemperature } as never);
    expect([needs(340), needs(339)]).toEqual([false, true]);
  });
});
