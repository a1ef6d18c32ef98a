import { describe, expect, it } from 'vitest';
import {
  atMost,
  below,
  CalculationError,
  finite,
  isCalculationError,
  nonNegative,
  oneOf,
  positive,
  properFraction,
  refuse,
  wholeNumber,
  within,
} from '../../src/formula/index.js';

type Guard = (value: number) => void;

const guards: Readonly<
  Record<string, readonly [guard: Guard, passes: readonly number[], fails: readonly number[], words: string]>
> = {
  positive: [
    (v) => positive(v, 'wall', 'm'),
    [5e-324, 1, 1e308],
    [0, -0, -1],
    'wall is -1 m; must be a finite number above 0',
  ],
  nonNegative: [
    (v) => nonNegative(v, 'wall', 'm'),
    [0, 1],
    [-5e-324, -1],
    'wall is -1 m; must be a finite number, 0 or above',
  ],
  finite: [(v) => finite(v, 'wall', 'm'), [0, -1e308], [], ''],
  within: [(v) => within(v, -1, 0.5, 'nu', ''), [-1, 0, 0.5], [-1.1, 0.51], 'nu is 0.51; must be from -1 to 0.5'],
  properFraction: [
    (v) => properFraction(v, 'overlap'),
    [0, 0.999],
    [1, -0.1],
    'overlap is -0.1; must be from 0 up to, not including, 1',
  ],
  wholeNumber: [
    (v) => wholeNumber(v, 1, 'plies'),
    [1, 7],
    [0, 1.5, 2 ** 53],
    'plies is 9007199254740000; must be a whole number, 1 or above',
  ],
  below: [
    (v) => below(v, 2, 'half the diameter', 'wall', 'm'),
    [-9, 1.999],
    [2, 3],
    'wall is 3 m; must be below half the diameter, 2 m',
  ],
  atMost: [
    (v) => atMost(v, 2, 'the wall', 'depth', 'm'),
    [-9, 2],
    [2.001],
    'depth is 2.001 m; must be at most the wall, 2 m',
  ],
};

describe.each(Object.entries(guards))('%s', (_, [guard, passes, fails, words]) => {
  it('lets through what it should', () => {
    for (const value of passes) expect(() => guard(value)).not.toThrow();
  });

  it('refuses the rest in a sentence with the value and the limit', () => {
    for (const value of fails) expect(() => guard(value)).toThrow(CalculationError);
    const last = fails.at(-1);
    if (last !== undefined) expect(() => guard(last)).toThrow(words);
  });

  it('refuses what is no finite number, even if it compares like one', () => {
    for (const value of [
      Number.NaN,
      Number.POSITIVE_INFINITY,
      Number.NEGATIVE_INFINITY,
      null,
      undefined,
      '1',
      [1],
      {},
      true,
    ]) {
      expect(() => guard(value as number), String(value)).toThrow(CalculationError);
    }
  });
});

describe('oneOf', () => {
  it('lets through a choice and refuses other words', () => {
    expect(() => oneOf('closed', ['open', 'closed'], 'ends')).not.toThrow();
    expect(() => oneOf('Closed' as 'closed', ['open', 'closed'], 'ends')).toThrow(
      'ends is Closed; must be one of open, closed',
    );
  });
});

describe('CalculationError', () => {
  const refusal = {
    code: 'outside-validity',
    parameter: 'depth',
    value: 9,
    unit: 'mm',
    constraint: 'must be at most 0.8 of the wall',
    source: 'B31G, 1.5',
  } as const;

  it('carries what was refused, and says it in a sentence', () => {
    const error = new CalculationError(refusal);
    expect(error).toMatchObject(refusal);
    expect(error.message).toBe('depth is 9 mm; must be at most 0.8 of the wall (B31G, 1.5)');
    expect(
      'source' in new CalculationError({ code: 'no-solution', parameter: 'p', value: 1, unit: '', constraint: 'x' }),
    ).toBe(false);
  });

  it('is thrown by refuse', () => {
    expect(() => refuse(refusal)).toThrow(CalculationError);
  });

  it('is known by its name and constraint, also from another copy of the library', () => {
    const foreign = Object.assign(new Error('depth is 9 mm'), { name: 'CalculationError', ...refusal });
    expect(isCalculationError(new CalculationError(refusal))).toBe(true);
    expect(isCalculationError(foreign)).toBe(true);
    expect(isCalculationError(new TypeError('x'))).toBe(false);
    expect(isCalculationError(refusal)).toBe(false);
    expect(isCalculationError(undefined)).toBe(false);
  });
});
