import { describe, expect, it } from 'vitest';
import { type CalculationError, isCalculationError } from '../../../src/formula/index.js';
import {
  type AbsolutePressure,
  absolute,
  type Ratio,
  type Temperature,
  type TemperatureDifference,
  temperature,
} from '../../../src/quantity/index.js';
import * as site from '../../../src/site/index.js';

/** Where the equations of the air end, and what stands at the very edge. */

const r = (value: number): Ratio => value as Ratio;
const pascals = (value: number): AbsolutePressure => value as AbsolutePressure;
const refusal = (call: () => unknown): CalculationError => {
  try {
    call();
  } catch (error) {
    if (isCalculationError(error)) return error;
    throw error;
  }
  throw new Error('nothing was refused');
};

describe('the span of a set of coefficients', () => {
  it.each(site.magnusSets.map((set) => [set.name, set] as const))('holds both of its ends: %s', (_, set) => {
    for (const end of [set.from, set.to]) {
      const at = temperature.degC(end);
      if (set.name === 'sonntag-ice') {
        expect(site.saturationPressureOverIce({ temperature: at })).toBeGreaterThan(0);
        continue;
      }
      const saturated = { temperature: at, humidity: r(1), set: set.name };
      expect(site.dewPoint(saturated)).toBeCloseTo(at, 9);
      const vapourPressure = site.saturationPressure(saturated);
      expect(site.dewPointFromVapourPressure({ vapourPressure, set: set.name })).toBeCloseTo(at, 9);
    }
  });

  it.each([
    [Number.NaN, 'invalid-input'],
    [Number.POSITIVE_INFINITY, 'invalid-input'],
    [-1, 'invalid-input'],
    [0, 'invalid-input'],
    [1, 'outside-validity'],
    [400, 'outside-validity'],
  ])('is another matter than a temperature that is none: %s K', (kelvin, code) => {
    const at = { temperature: kelvin as Temperature };
    expect(refusal(() => site.saturationPressure(at)).code).toBe(code);
    expect(refusal(() => site.saturationPressureOverIce(at)).code).toBe(code);
  });

  it('is said with the dew point that lies outside, and of more vapour than any dew point has with none', () => {
    const of = (exponent: number): CalculationError =>
      refusal(() => site.dewPointFromVapourPressure({ vapourPressure: pascals(611.2 * Math.exp(exponent)) }));
    // At 70 degC the exponent is 17.62 t/(243.12 + t).
    expect(of((17.62 * 70) / (243.12 + 70)).value).toBeCloseTo(70, 9);
    for (const beyond of [17.62, 18, 100]) expect(of(beyond).value).toBe('beyond any');
  });
});

describe('air at the freezing point', () => {
  it('saturated at 0 degC bears dew, not frost', () => {
    const air = { temperature: temperature.degC(0), humidity: r(1) };
    expect(site.condensationPoint(air)).toEqual({ point: 273.15, isFrost: false });
    expect(site.dewPointBelowFreezing(air)).toBe(false);
  });

  it('bears steel whose margin is just what is asked', () => {
    const climate = {
      steelTemperature: temperature.degC(20),
      airTemperature: temperature.degC(18),
      humidity: r(0.7),
    };
    const { worstMargin } = site.steelMargin(climate);
    expect(site.steelMargin({ ...climate, requiredMargin: worstMargin }).isEnough).toBe(true);
    const more = (worstMargin + 1e-9) as TemperatureDifference;
    expect(site.steelMargin({ ...climate, requiredMargin: more }).isEnough).toBe(false);
  });

  it('without any vapour is no reading, and drier than the hygrometer can tell is a reading', () => {
    const code = (humidity: number): string =>
      refusal(() => site.dewPointBand({ temperature: temperature.degC(20), humidity: r(humidity) })).code;
    expect(code(0)).toBe('invalid-input');
    expect(code(0.01)).toBe('outside-validity');
    expect(code(0.03)).toBe('outside-validity');
  });
});

describe('the equation of Hyland and Wexler', () => {
  const at = (kelvin: number): number => site.saturationPressureAshrae({ temperature: kelvin as Temperature });

  it('holds at both ends of its span', () => {
    for (const end of [173.15, 473.15]) expect(at(end)).toBeGreaterThan(0);
  });

  it('is that over ice up to the triple point, which both forms reach, and that over water above it', () => {
    const [C1, C2, C3, C4, C5, C6, C7] = [
      -5674.5359, 6.3925247, -9.677843e-3, 6.2215701e-7, 2.0747825e-9, -9.484024e-13, 4.1635019,
    ];
    const T = 273.16;
    const ice = Math.exp(C1 / T + C2 + C3 * T + C4 * T ** 2 + C5 * T ** 3 + C6 * T ** 4 + C7 * Math.log(T));
    expect(at(T) / ice).toBeCloseTo(1, 12);
    expect(at(T + 1e-12) / ice).toBeCloseTo(1, 6);
    expect(at(T + 1e-12) / ice).not.toBeCloseTo(1, 12);
  });
});

describe('wet and dry bulb', () => {
  const dryBulb = temperature.degC(30);

  it('are read with water on the bulb from 0 degC on', () => {
    const bulbs = { dryBulb: temperature.degC(3), wetBulb: temperature.degC(0), pressure: absolute.hPa(1013) };
    expect(site.vapourPressureFromWetBulb(bulbs)).toBeGreaterThan(0);
  });

  it('tell nothing where the water boils', () => {
    const wetBulb = temperature.degC(25);
    const boiling = site.saturationPressureAshrae({ temperature: wetBulb });
    for (const pressure of [boiling, pascals(0.9 * boiling)]) {
      expect(() => site.moistAirFromWetBulb({ dryBulb, wetBulb, pressure })).toThrow(/must not boil/);
    }
    expect(() => site.moistAirFromWetBulb({ dryBulb, wetBulb, pressure: pascals(1.1 * boiling) })).not.toThrow();
  });

  it.each([
    [
      'by the ASHRAE form',
      (p: AbsolutePressure, wetBulb: Temperature) =>
        site.moistAirFromWetBulb({ dryBulb, wetBulb, pressure: p }).vapourPressure,
    ],
    [
      'by the WMO form',
      (p: AbsolutePressure, wetBulb: Temperature) => site.vapourPressureFromWetBulb({ dryBulb, wetBulb, pressure: p }),
    ],
  ])('give air with some vapour or none at all, to the last digit of the pressure: %s', (_, vapourOf) => {
    for (let wet = 4; wet < 12; wet += 0.02) {
      const of = (p: number): number | undefined => {
        try {
          return vapourOf(pascals(p), temperature.degC(wet));
        } catch (error) {
          if (isCalculationError(error)) return undefined;
          throw error;
        }
      };
      // The thinner the air, the more vapour the same pair of readings means.
      let [some, none] = [2e4, 4e5];
      expect(of(none)).toBeUndefined();
      for (let middle = (some + none) / 2; middle !== some && middle !== none; middle = (some + none) / 2) {
        if (of(middle) === undefined) none = middle;
        else some = middle;
      }
      expect(of(some)).toBeGreaterThan(0);
    }
  });
});
