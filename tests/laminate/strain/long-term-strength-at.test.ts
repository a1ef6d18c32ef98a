import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { longTermStrengthAt } from '../../../src/laminate/index.js';
import { stress, temperature } from '../../../src/quantity/index.js';

const tests = {
  coolStrength: stress.MPa(60),
  coolTemperature: temperature.degC(25),
  warmStrength: stress.MPa(40),
  warmTemperature: temperature.degC(65),
};
const at = (degC: number) => longTermStrengthAt({ ...tests, designTemperature: temperature.degC(degC) }) / 1e6;

describe('the long-term strength', () => {
  it('is that of a test at its temperature, and a cooler pipe earns no more', () => {
    expect([at(-10), at(25), at(65)].map((MPa) => MPa.toFixed(9))).toEqual([
      '60.000000000',
      '60.000000000',
      '40.000000000',
    ]);
  });

  it('lies between two tests on their line', () => {
    fc.assert(
      fc.property(fc.double({ min: 25, max: 65, noNaN: true }), (degC) => {
        expect(at(degC)).toBeCloseTo(60 - (20 * (degC - 25)) / 40, 9);
      }),
      { seed: 20261125, numRuns: 100 },
    );
  });

  it('is refused above the warmer test, and above the only one', () => {
    expect(() => at(65.1)).toThrow(/above it they say nothing/u);
    const one = { ...tests, warmStrength: tests.coolStrength, warmTemperature: tests.coolTemperature };
    expect(longTermStrengthAt({ ...one, designTemperature: temperature.degC(25) })).toBe(60e6);
    expect(() => longTermStrengthAt({ ...one, designTemperature: temperature.degC(25.1) })).toThrow(/above it/u);
  });
});
