import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isCalculationError } from '../../../src/formula/index.js';
import {
  allowableStrain,
  cyclicFactor,
  temperatureFactor,
  upperTemperatureLimit,
} from '../../../src/laminate/index.js';
import {
  type Strain,
  type Temperature,
  type ThermalExpansion,
  temperature,
  temperatureDifference,
} from '../../../src/quantity/index.js';
import { near, rising, seeded, span } from '../../properties/spans.js';

describe('the temperature factor', () => {
  it('is 0.7014 at the limit, at most 1, and reaches 1 where its quadratic does, 62.7 K below', () => {
    expect(
      temperatureFactor({ upperTemperatureLimit: temperature.degC(80), designTemperature: temperature.degC(80) }),
    ).toBe(0.7014);
    const cap = (-0.001 + Math.sqrt(0.001 ** 2 + 4 * 6e-5 * (1 - 0.7014))) / (2 * 6e-5);
    expect(cap).toBeCloseTo(62.7, 1);
    const at = (below: number) =>
      temperatureFactor({
        upperTemperatureLimit: temperature.degC(150),
        designTemperature: (temperature.degC(150) - below) as Temperature,
      });
    expect(at(cap - 0.01)).toBeLessThan(1);
    expect(at(cap + 0.01)).toBe(1);
    expect(at(140)).toBe(1);
  });

  it('lies on the table that an older edition gave in its place, within 0.023', () => {
    for (const [below, old] of [
      [0, 0.7],
      [20, 0.75],
      [40, 0.85],
      [50, 0.9],
      [60, 1],
    ] as const) {
      const factor = temperatureFactor({
        upperTemperatureLimit: temperature.degC(100),
        designTemperature: temperature.degC(100 - below),
      });
      expect(Math.abs(factor - old)).toBeLessThan(0.023);
    }
  });

  it('takes the coefficients of another degree: the printed Fahrenheit line gives 0.7489 at 36 degF', () => {
    const factor = temperatureFactor({
      upperTemperatureLimit: temperature.degC(80),
      designTemperature: temperature.degC(60),
      quadratic: 2e-5,
      linear: 0.0006,
      coefficientUnit: temperatureDifference.degF(1),
    });
    expect(factor).toBeCloseTo(0.7489, 4);
  });

  it('is refused above the upper temperature limit', () => {
    const limit = upperTemperatureLimit({
      transitionTemperature: temperature.degC(110),
      margin: temperatureDifference.kelvin(30),
    });
    near(limit, temperature.degC(80), 1e-15);
    try {
      temperatureFactor({ upperTemperatureLimit: limit, designTemperature: temperature.degC(80.5) });
      expect.fail('it was accepted');
    } catch (error) {
      if (!isCalculationError(error)) throw error;
      expect(error.code).toBe('outside-validity');
      expect(error.parameter).toBe('designTemperature');
    }
  });
});

describe('the cyclic factor', () => {
  it('is 1 up to 7000 cycles and near one half just past them, without pressure at the low end', () => {
    expect(cyclicFactor({ cycles: 7000, pressureRatio: 0 })).toBe(1);
    expect(cyclicFactor({ cycles: 7001, pressureRatio: 0 })).toBeCloseTo(0.5002, 4);
    expect(cyclicFactor({ cycles: 100_000_000, pressureRatio: 0 })).toBeCloseTo(0.25, 3);
  });

  it('never rises with cycles or falls with the pressure ratio, and stays above 0 and at most 1', () => {
    const count = fc.integer({ min: 0, max: 100_000_000 });
    fc.assert(
      fc.property(count, count, rising(0, 1), (m, n, [low, high]) => {
        const [few, many] = [Math.min(m, n), Math.max(m, n)];
        const at = (cycles: number, pressureRatio: number) => cyclicFactor({ cycles, pressureRatio });
        expect(at(many, low)).toBeLessThanOrEqual(at(few, low));
        expect(at(many, low)).toBeLessThanOrEqual(at(many, high) * (1 + 1e-15));
        expect(at(many, low)).toBeGreaterThan(0);
        expect(at(few, high)).toBeLessThanOrEqual(1);
      }),
      seeded,
    );
  });

  it('is not known beyond 1e8 cycles', () => {
    const at = (cycles: number) => () => cyclicFactor({ cycles, pressureRatio: 0.2 });
    expect(at(1e8)()).toBeGreaterThan(0.25);
    expect(at(1e8 + 1)).toThrow(/cycles is 100000001; must be at most 100000000/u);
  });

  it('is capped where the bracket falls below one, if it is started that early', () => {
    expect(cyclicFactor({ cycles: 500, pressureRatio: 0, freeCycles: 1 })).toBe(1);
    expect(() => cyclicFactor({ cycles: 200, pressureRatio: 0, freeCycles: 1 })).toThrow('must be above');
    expect(() => cyclicFactor({ cycles: 8000.5, pressureRatio: 0 })).toThrow('whole number');
  });
});

const drawn = fc.record({
  defaultStrain: span<Strain>(1e-3, 4e-3),
  temperatureFactor: span(0.7, 1),
  cyclicFactor: span(0.25, 1),
  designTemperature: span<Temperature>(260, 380),
  installationTemperature: span<Temperature>(275, 320),
  substrateExpansion: span<ThermalExpansion>(1e-5, 1.8e-5),
  laminateExpansion: span<ThermalExpansion>(-1e-6, 3e-5),
});

function strainOf(input: Parameters<typeof allowableStrain>[0]): number | undefined {
  try {
    return allowableStrain(input);
  } catch (error) {
    if (isCalculationError(error) && error.code === 'no-solution') return undefined;
    throw error;
  }
}

describe('the allowable strain', () => {
  it('is above 0 and never above the default strain times its factors', () => {
    fc.assert(
      fc.property(drawn, (given) => {
        const strain = strainOf(given);
        if (strain === undefined) return;
        expect(strain).toBeGreaterThan(0);
        expect(strain).toBeLessThanOrEqual(
          given.defaultStrain * given.temperatureFactor * given.cyclicFactor * (1 + 1e-15),
        );
      }),
      seeded,
    );
  });

  it('takes off the mismatch whichever of pipe and laminate expands more, and whether it warms or cools', () => {
    fc.assert(
      fc.property(drawn, (given) => {
        const swapped = {
          ...given,
          substrateExpansion: given.laminateExpansion,
          laminateExpansion: given.substrateExpansion,
        };
        const cooled = {
          ...given,
          designTemperature: given.installationTemperature,
          installationTemperature: given.designTemperature,
        };
        expect(strainOf(swapped)).toBe(strainOf(given));
        expect(strainOf(cooled)).toBe(strainOf(given));
      }),
      seeded,
    );
  });

  it('never rises on a hotter line, with the temperature factor along, above the installation temperature', () => {
    fc.assert(
      fc.property(drawn, rising<Temperature>(320, 390), (given, [warm, hot]) => {
        const at = (designTemperature: Temperature) =>
          strainOf({
            ...given,
            designTemperature,
            temperatureFactor: temperatureFactor({ upperTemperatureLimit: 390 as Temperature, designTemperature }),
          });
        expect(at(hot) ?? 0).toBeLessThanOrEqual((at(warm) ?? 0) * (1 + 1e-14));
      }),
      seeded,
    );
  });

  it('is refused when nothing is left, with the default strain that would leave something', () => {
    const given = {
      defaultStrain: 0.001 as Strain,
      temperatureFactor: 0.8,
      cyclicFactor: 1,
      designTemperature: temperature.degC(90),
      installationTemperature: temperature.degC(10),
      substrateExpansion: 12e-6 as ThermalExpansion,
      laminateExpansion: 0 as ThermalExpansion,
    };
    try {
      allowableStrain(given);
      expect.fail('it was accepted');
    } catch (error) {
      if (!isCalculationError(error)) throw error;
      expect(error.code).toBe('no-solution');
      const passes = Number(/must be above ([\d.e-]+),/u.exec(error.message)?.[1]);
      near(passes, (80 * 12e-6) / 0.8, 1e-12);
      expect(strainOf({ ...given, defaultStrain: (passes * 1.001) as Strain })).toBeGreaterThan(0);
    }
  });
});
