import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatNumber } from '../../src/quantity/format.js';
import { formatGiven, formatToward, halfUnit, rounds } from '../../src/report/number.js';

const settings = { seed: 20261125, numRuns: 500 };
const number = fc.double({ min: 1e-9, max: 1e12, noNaN: true }).chain((size) => fc.constantFrom(size, -size));
const digits = fc.integer({ min: 2, max: 15 });

describe('a number on the sheet', () => {
  it.for([
    [19.326, 4, '19.33'],
    [20, 4, '20.00'],
    [0.001, 4, '0.001000'],
    [0.00099999, 4, '0.001000'],
    [123456, 4, '123500'],
    [999999, 6, '999999'],
    [999999, 4, '1.000e6'],
    [1e6, 4, '1.000e6'],
    [9999.6, 4, '10000'],
    [0, 4, '0'],
    [-0.25, 3, '-0.250'],
    [1.234567e-5, 4, '1.235e-5'],
  ] as const)('%d with %d digits is %s', ([value, count, text]) => {
    expect(formatNumber(value, count)).toBe(text);
  });

  it('has no exponent from 0.001 up to a million', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 9.9e5, noNaN: true }), digits, (value, count) => {
        expect(formatNumber(value, count)).not.toContain('e');
      }),
      settings,
    );
  });

  it('is a rounding of the number, and no other number of as many digits is nearer', () => {
    fc.assert(
      fc.property(number, digits, (value, count) => {
        const text = formatNumber(value, count);
        expect(rounds(text, value, count)).toBe(true);
        expect(Number(text)).toBe(Number(value.toPrecision(count)));
      }),
      settings,
    );
  });

  it('is not taken for a rounding of what lies a unit away', () => {
    fc.assert(
      fc.property(number, fc.integer({ min: 2, max: 12 }), (value, count) => {
        const text = formatNumber(value, count);
        const unit = 2 * halfUnit(text, count);
        expect(rounds(text, Number(text) + 0.51 * unit, count)).toBe(false);
        expect(rounds(text, Number(text) - 0.51 * unit, count)).toBe(false);
      }),
      settings,
    );
  });

  it('shows a short number that was given in full, and rounds a long one', () => {
    expect(formatGiven(8.38)).toBe('8.38');
    expect(formatGiven(323.85)).toBe('323.85');
    expect(formatGiven((0.32385 * 1000) / 1)).toBe('323.85');
    expect(formatGiven(10)).toBe('10');
    expect(formatGiven(1 / 3)).toBe('0.3333');
    expect(formatGiven(1.2e-5)).toBe('1.2e-5');
    expect(formatGiven(2.5e6)).toBe('2.5e6');
    expect(formatGiven(0)).toBe('0');
    expect(formatGiven(-40)).toBe('-40');
  });
});

describe('a limit on the sheet', () => {
  it.for([
    [0.06234, 3, 'up', '0.0624'],
    [0.06234, 3, 'down', '0.0623'],
    [60, 4, 'up', '60.00'],
    [0.1 + 0.2, 4, 'up', '0.3000'],
    [9999.1, 4, 'up', '10000'],
    [-0.25049, 3, 'up', '-0.250'],
    [-0.25049, 3, 'down', '-0.251'],
    [0, 4, 'down', '0'],
  ] as const)('%d with %d digits, %s, is %s', ([value, count, toward, text]) => {
    expect(formatToward(value, count, toward)).toBe(text);
  });

  it('stands on the safe side of the number, and by less than one unit of its last digit', () => {
    fc.assert(
      fc.property(number, fc.integer({ min: 2, max: 9 }), (value, count) => {
        const unit = 2 * halfUnit(value.toExponential(12), count);
        const up = Number(formatToward(value, count, 'up')) - value;
        const down = value - Number(formatToward(value, count, 'down'));
        for (const beyond of [up, down]) {
          expect(beyond).toBeGreaterThanOrEqual(-2e-6 * unit);
          expect(beyond).toBeLessThan(unit * (1 + 1e-5));
        }
      }),
      settings,
    );
  });
});
