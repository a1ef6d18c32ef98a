import { describe, expect, it } from 'vitest';
import {
  absolute,
  difference,
  gauge,
  shift,
  temperature,
  temperatureDifference,
  toAbsolute,
  toGauge,
} from '../../src/quantity/index.js';

describe('pressures', () => {
  it('become absolute by the atmosphere that is given, and gauge again without it', () => {
    const atmosphere = absolute.hPa(1013);
    expect(absolute.inBar(toAbsolute(gauge.bar(10), atmosphere))).toBeCloseTo(11.013, 12);
    expect(gauge.inBar(toGauge(toAbsolute(gauge.bar(10), atmosphere), atmosphere))).toBeCloseTo(10, 12);
    expect(gauge.inBar(toGauge(absolute.bar(0.5), absolute.bar(1)))).toBe(-0.5);
  });
});

describe('temperatures', () => {
  it('have a difference, which moves one to the other', () => {
    const [warm, cold] = [temperature.degC(30), temperature.degC(12)];
    expect(temperatureDifference.inDegF(difference(warm, cold))).toBeCloseTo(32.4, 12);
    expect(shift(cold, difference(warm, cold))).toBe(warm);
    expect(difference(cold, warm)).toBe(-difference(warm, cold));
    expect(temperature.inDegC(shift(temperature.degC(20), temperatureDifference.degF(9)))).toBeCloseTo(25, 12);
    expect(shift(temperature.degC(20), temperatureDifference.kelvin(0))).toBe(temperature.degC(20));
  });
});
