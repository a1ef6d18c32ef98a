import { describe, expect, it } from 'vitest';
import * as cure from '../../../src/cure/index.js';

/** What holds at a limit of a wait itself, in numbers that a binary fraction holds to the last digit. */

const mechanism = 'two-part reaction';
const law = { mechanism, referenceTemperature: 300, minimumTemperature: 280 };

describe('a wait over a history', () => {
  const over = (...steps: readonly (readonly [duration: number, temperature: number])[]) =>
    cure.cureWaitOverHistory({
      ...law,
      requiredTime: 64,
      steps: steps.map(([duration, temperature]) => ({ duration, temperature })),
    } as never);

  it('ends with the step that just brings what is needed', () => {
    expect(over([64, 300])).toMatchObject({ wait: 64, shortest: 64, step: 1 });
    expect(over([64, 300], [1000, 270], [64, 300])).toMatchObject({ wait: 64, step: 1 });
    expect(over([32, 300], [1000, 270], [32, 300])).toMatchObject({ wait: 1064, step: 3 });
  });

  it('names the lowest of the energies that come to the same at the reference temperature', () => {
    const at = { ...law, temperature: 300, time: 64 };
    expect(over([64, 300]).governingEnergy).toBe(40e3);
    expect(cure.cureWait(at as never).governingEnergy).toBe(40e3);
    expect(cure.workingTime(at as never).governingEnergy).toBe(40e3);
  });
});

describe('a wait of more days than a number counts one by one', () => {
  it('is refused, though a lower energy would still be waited for', () => {
    const swing = { ...law, minimumTemperature: 200, swing: 0, sinceColdest: 0, meanTemperature: 215 };
    const at = (activationEnergy?: number) =>
      cure.cureWaitOverSwing({ ...swing, requiredTime: 1.1e18, activationEnergy } as never).wait;
    const shift = Math.exp((40e3 / 8.31446261815324) * (1 / 300 - 1 / 215));
    expect((at(40e3) * shift) / 1.1e18).toBeCloseTo(1, 9);
    const refused = expect.objectContaining({ parameter: 'requiredTime', value: Number.POSITIVE_INFINITY });
    expect(() => at(60e3)).toThrow(refused);
    expect(() => at()).toThrow(refused);
  });
});

describe('the first cool hour', () => {
  const first = (limit: number, ...temperatures: readonly number[]) =>
    cure.firstCoolHour({
      limit,
      forecast: temperatures.map((each) => ({ duration: 3600, pipeTemperature: each, airTemperature: each - 1 })),
    } as never);

  it('is one that just keeps the limit', () => {
    expect(first(300, 301, 300, 299)).toBe(3600);
    expect(() => first(298.9, 301, 300, 299)).toThrow(expect.objectContaining({ parameter: 'limit', limit: 299 }));
  });

  it('is not asked of an empty forecast', () => {
    expect(() => first(300)).toThrow(expect.objectContaining({ code: 'no-solution', parameter: 'forecast' }));
  });
});

describe('where two times meet', () => {
  it('of two rows alike the maker’s own working time names the first', () => {
    const rows = [290, 300, 310].map((temperature) => ({ temperature, humidity: 0.5, time: 600 }));
    const asked = { rows, temperature: 295, humidity: 0.5, purpose: 'working time' };
    expect(cure.makersTime(asked as never)).toEqual({ time: 600, row: 2 });
  });

  it('a window that closes as it opens is none', () => {
    const at = (closes: number) => () => cure.overcoatWindow({ ...law, temperature: 300, opens: 600, closes } as never);
    expect(at(600)).toThrow(expect.objectContaining({ code: 'no-solution', parameter: 'temperature' }));
    expect(at(601)().length).toBe(1);
  });

  it('a working time that no heat takes away is bounded by the tested span', () => {
    const given = { ...law, testedTo: 320, time: 1e6, neededTime: 1e-6 };
    expect(cure.warmestForWorkingTime(given as never)).toEqual({ temperature: 320, limitedBy: 'tested span' });
  });
});
