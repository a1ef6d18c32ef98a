import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  blockedLinePressure,
  blockedLinePressureChange,
  pressurePerKelvin,
  warmedTemperature,
  waterVolumeFactor,
} from '../../../src/acceptance/index.js';
import {
  gauge,
  length,
  type Temperature,
  type TemperatureDifference,
  temperature,
} from '../../../src/quantity/index.js';

const settings = { seed: 20261125, numRuns: 300 };
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const [outsideDiameter, wallThickness] = [length.mm(323.9), length.mm(8.38)];

describe('the temperature beside that of the water', () => {
  it('is one kelvin off and has its row in the table wherever the water itself has', () => {
    fc.assert(
      fc.property(span(274.9, 310.9), (kelvin) => {
        const beside = warmedTemperature({ temperature: kelvin as Temperature });
        expect(Math.abs(beside - kelvin)).toBeCloseTo(1, 9);
        expect(waterVolumeFactor({ temperature: beside })).toBeGreaterThan(0.99);
      }),
      settings,
    );
  });
});

describe('the change of pressure for one kelvin', () => {
  const per = (start: Temperature, end: Temperature) => {
    const pressure = gauge.bar(44);
    const endPressure = blockedLinePressure({
      pressure,
      startTemperature: start,
      endTemperature: end,
      startWaterFactor: waterVolumeFactor({ temperature: start }),
      endWaterFactor: waterVolumeFactor({ temperature: end }),
      outsideDiameter,
      wallThickness,
    });
    return pressurePerKelvin({ startPressure: pressure, endPressure, startTemperature: start, endTemperature: end });
  };

  it('agrees with the linear form by the bulk modulus of water, whose expansion at 25 degC is 2.57e-4 1/K', () => {
    const linear = blockedLinePressureChange({
      temperatureChange: 1 as TemperatureDifference,
      liquidExpansion: 2.57e-4 as never,
      outsideDiameter,
      wallThickness,
    });
    expect(per(temperature.degC(24.5), temperature.degC(25.5)) / linear).toBeCloseTo(1, 1);
  });

  it('is the same whether the step goes up or down, within one row of the table', () => {
    const [a, b] = [temperature.degC(35.1), temperature.degC(37.7)];
    expect(per(a, b) / per(b, a)).toBeCloseTo(1, 1);
    expect(per(a, b)).toBeGreaterThan(0);
  });

  it('falls in water colder than it is densest', () => {
    expect(per(temperature.degC(2), temperature.degC(3))).toBeLessThan(0);
  });

  it('refuses two pressures at one temperature', () => {
    const [start, at] = [gauge.bar(10), temperature.degC(20)];
    const same = { startPressure: start, endPressure: start, startTemperature: at, endTemperature: at };
    expect(() => pressurePerKelvin(same)).toThrow(/one temperature tells no change/);
  });
});
