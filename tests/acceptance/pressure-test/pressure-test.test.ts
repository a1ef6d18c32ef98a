import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  blockedLinePressure,
  blockedLinePressureChange,
  blockedLinePressureChangeBeyondOneStep,
  lineVolume,
  type PressureFallInput,
  pipeStretchFactor,
  pipeWarmingFactor,
  pressureFall,
  provenPressure,
  provenPressureAboveTest,
  testPressure,
  testPressureBelowOperation,
  waterCompressionFactor,
  waterDensity,
  waterSwelling,
  waterToAdd,
  waterVolumeFactor,
  waterWarmingFactor,
} from '../../../src/acceptance/index.js';
import { isCalculationError } from '../../../src/formula/index.js';
import {
  type GaugePressure,
  gauge,
  type Length,
  length,
  type Ratio,
  type Temperature,
  type TemperatureDifference,
  temperature,
  temperatureDifference,
  thermalExpansion,
  type Volume,
  volume,
} from '../../../src/quantity/index.js';
import { evenSpan, run } from '../../properties/spans.js';

const pipe = { outsideDiameter: length.inch(10.75), wallThickness: length.inch(0.279) };

function blocked(pressure: GaugePressure, from: Temperature, to: Temperature, line = pipe): GaugePressure {
  return blockedLinePressure({
    ...line,
    pressure,
    startTemperature: from,
    endTemperature: to,
    startWaterFactor: waterSwelling({ density: waterDensity({ temperature: from }) }),
    endWaterFactor: waterSwelling({ density: waterDensity({ temperature: to }) }),
  });
}

describe('the test pressure', () => {
  it('is 1.1 times the operating pressure when nothing else is said', () => {
    expect(testPressure({ pressure: gauge.bar(10) }) / 1.1e6).toBeCloseTo(1, 12);
    expect(testPressure({ pressure: gauge.bar(10), factor: 1.5 }) / 1.5e6).toBeCloseTo(1, 12);
  });

  it('below the operating pressure is noted', () => {
    expect(testPressureBelowOperation({ pressure: gauge.bar(10), factor: 0.99 })).toBe(true);
    expect(testPressureBelowOperation({ pressure: gauge.bar(10) })).toBe(false);
  });
});

describe('the pressure that a test bears out', () => {
  it('is that whose test it would be', () => {
    run(
      fc.property(evenSpan(0, 20e6), evenSpan(1, 1.5), (pressure, factor) => {
        const testPressureOfIt = testPressure({ pressure: pressure as GaugePressure, factor });
        expect(provenPressure({ testPressure: testPressureOfIt, factor })).toBeCloseTo(pressure, 6);
      }),
    );
    expect(provenPressure({ testPressure: gauge.bar(11) }) / 1e6).toBeCloseTo(1, 12);
  });

  it('by a test that stays below it is noted', () => {
    expect(provenPressureAboveTest({ testPressure: gauge.bar(10), factor: 0.99 })).toBe(true);
    expect(provenPressureAboveTest({ testPressure: gauge.bar(10), factor: 1 })).toBe(false);
    expect(provenPressureAboveTest({ testPressure: gauge.bar(10) })).toBe(false);
  });
});

describe('the water of a test', () => {
  it('fills the difference of two cylinders', () => {
    run(
      fc.property(evenSpan(0.06, 1.2), evenSpan(0.001, 0.02), evenSpan(1, 5000), (D, t, L) => {
        const input = { outsideDiameter: D as Length, wallThickness: t as Length, length: L as Length };
        const steel = Math.PI * t * (D - t) * L;
        expect((lineVolume(input) + steel) / ((Math.PI / 4) * D * D * L)).toBeCloseTo(1, 9);
      }),
    );
  });

  it('at no pressure and 60 degF is what fills the line', () => {
    const waterTemperature = temperature.degF(60);
    const compressionFactor = waterCompressionFactor({ pressure: gauge.MPa(0) });
    const stretchFactor = pipeStretchFactor({ ...pipe, pressure: gauge.MPa(0), temperature: waterTemperature });
    const pipeFactor = pipeWarmingFactor({ temperature: waterTemperature });
    const warmingFactor = waterWarmingFactor({
      pipeFactor,
      waterFactor: waterVolumeFactor({ temperature: waterTemperature }),
    });
    expect([compressionFactor, stretchFactor, pipeFactor, warmingFactor]).toEqual([1, 1, 1, 1]);
    expect(waterToAdd({ volume: volume.m3(420), compressionFactor, stretchFactor, warmingFactor }).waterToAdd).toBe(0);
  });

  it('to add grows with pressure and with a thinner wall', () => {
    run(
      fc.property(evenSpan(0, 20e6), evenSpan(1e4, 5e6), evenSpan(0.5, 0.99), (P, more, thinner) => {
        const add = (pressure: number, share: number): number =>
          waterToAdd({
            volume: 100 as Volume,
            compressionFactor: waterCompressionFactor({ pressure: pressure as GaugePressure }),
            stretchFactor: pipeStretchFactor({
              outsideDiameter: pipe.outsideDiameter,
              wallThickness: (pipe.wallThickness * share) as Length,
              pressure: pressure as GaugePressure,
              temperature: temperature.degC(15),
            }),
            warmingFactor: 1 as Ratio,
          }).waterToAdd;
        expect(add(P + more, 1)).toBeGreaterThan(add(P, 1));
        expect(add(P + more, thinner)).toBeGreaterThan(add(P + more, 1));
      }),
    );
  });

  it('stretches a line with free ends more than one that is held', () => {
    const input = { ...pipe, pressure: gauge.MPa(10), temperature: temperature.degF(60) };
    const [held, free] = [pipeStretchFactor(input), pipeStretchFactor({ ...input, restraint: 1.25 - 0.3 })];
    expect((free - 1) / (held - 1)).toBeCloseTo(0.95 / 0.91, 9);
  });

  it('has its least volume between 39 and 40 degF of the printed rows, and is refused outside them', () => {
    expect(waterVolumeFactor({ temperature: temperature.degF(40) })).toBeLessThan(
      waterVolumeFactor({ temperature: temperature.degF(35) }),
    );
    expect(waterVolumeFactor({ temperature: temperature.degF(40) })).toBeLessThan(
      waterVolumeFactor({ temperature: temperature.degF(45) }),
    );
    expect(waterVolumeFactor({ temperature: temperature.degF(35) })).toBe(0.9990777);
    expect(waterVolumeFactor({ temperature: temperature.degF(100) })).toBeCloseTo(1.006009, 12);
    for (const waterTemperature of [temperature.degF(34.99), temperature.degF(100.01)]) {
      expect(() => waterVolumeFactor({ temperature: waterTemperature })).toThrow(/35 degF/u);
    }
  });
});

describe('the density of water', () => {
  it('at 60 degF is the one that the swelling is counted from', () => {
    expect(waterSwelling({ density: waterDensity({ temperature: temperature.degF(60) }) })).toBeCloseTo(1, 13);
  });

  it('is greatest between 39 and 40 degF, and is refused outside 35 to 100 degF', () => {
    const at = (degrees: number) => waterDensity({ temperature: temperature.degF(degrees) });
    for (let degrees = 35; degrees < 39; degrees += 0.5) expect(at(degrees + 0.5)).toBeGreaterThan(at(degrees));
    for (let degrees = 40; degrees < 100; degrees += 0.5) expect(at(degrees + 0.5)).toBeLessThan(at(degrees));
    for (const degrees of [34.99, 100.01]) expect(() => at(degrees)).toThrow(/35 degF/u);
  });
});

describe('a blocked line', () => {
  it('keeps its pressure at its temperature', () => {
    run(
      fc.property(evenSpan(0, 20e6), evenSpan(275, 310), (P, T) => {
        const end = blocked(P as GaugePressure, T as Temperature, T as Temperature);
        expect(Math.abs(end - P)).toBeLessThan(1e-8 * P + 1e-6);
      }),
    );
  });

  it('falls when it cools and rises when it warms, above 50 degF', () => {
    run(
      fc.property(evenSpan(5e6, 15e6), evenSpan(285, 300), evenSpan(0.01, 2), (P, T, dT) => {
        const [start, here] = [P as GaugePressure, T as Temperature];
        expect(blocked(start, here, (T - dT) as Temperature)).toBeLessThan(P);
        expect(blocked(start, here, (T + dT) as Temperature)).toBeGreaterThan(P);
      }),
    );
  });

  it('comes back to its pressure when its temperature comes back', () => {
    run(
      fc.property(evenSpan(5e6, 15e6), evenSpan(285, 300), evenSpan(-2, 5), (P, T, dT) => {
        const [here, there] = [T as Temperature, (T + dT) as Temperature];
        expect(blocked(blocked(P as GaugePressure, here, there), there, here) / P).toBeCloseTo(1, 9);
      }),
    );
  });

  it('moves less where the pipe gives more', () => {
    const stiff = { outsideDiameter: length.mm(168.3), wallThickness: length.mm(10) };
    const soft = { outsideDiameter: length.mm(168.3), wallThickness: length.mm(2) };
    const rise = (line: typeof stiff) => blocked(gauge.MPa(5), temperature.degC(20), temperature.degC(25), line);
    expect(rise(soft)).toBeLessThan(rise(stiff));
  });

  it('that would cool to nothing is refused, not returned below zero', () => {
    try {
      blocked(gauge.MPa(0.5), temperature.degC(25), temperature.degC(15));
      expect.fail('a negative pressure came back');
    } catch (error) {
      if (!isCalculationError(error)) throw error;
      expect(error.code).toBe('no-solution');
    }
  });

  it('changes per kelvin in proportion, and not at all where liquid and pipe expand alike', () => {
    const input = {
      ...pipe,
      temperatureChange: temperatureDifference.kelvin(1),
      liquidExpansion: thermalExpansion.perK(0.00021),
    };
    const perKelvin = blockedLinePressureChange(input);
    expect(perKelvin).toBeGreaterThan(0);
    expect(
      blockedLinePressureChange({ ...input, temperatureChange: temperatureDifference.kelvin(-3) }) / perKelvin,
    ).toBeCloseTo(-3, 12);
    const alike = blockedLinePressureChange({ ...input, liquidExpansion: thermalExpansion.perK(2 * 1.3 * 11.7e-6) });
    expect(Math.abs(alike)).toBeLessThan(1e-6);
    expect(
      blockedLinePressureChangeBeyondOneStep({ ...input, temperatureChange: temperatureDifference.kelvin(-5.1) }),
    ).toBe(true);
    expect(blockedLinePressureChangeBeyondOneStep(input)).toBe(false);
  });
});

describe('a fall of the test pressure', () => {
  const cooled: PressureFallInput = {
    ...pipe,
    startPressure: gauge.MPa(10),
    endPressure: blocked(gauge.MPa(10), temperature.degC(20), temperature.degC(19.5)),
    startTemperature: temperature.degC(20),
    endTemperature: temperature.degC(19.5),
    pressureError: gauge.bar(0.05),
    temperatureError: temperatureDifference.kelvin(0.02),
    allowedFall: gauge.bar(0.5),
    volume: volume.m3(100),
  };
  const fallen = (fall: number, change: Partial<PressureFallInput> = {}) =>
    pressureFall({ ...cooled, endPressure: (cooled.endPressure - fall) as GaugePressure, ...change });

  it('that the temperatures explain is only cooling, and no water is lost', () => {
    const fall = pressureFall(cooled);
    expect(fall.verdict).toBe('only cooling');
    expect(fall.fallExpected).toBeGreaterThan(5e4);
    expect(fall.fallSeen / fall.fallExpected).toBeCloseTo(1, 9);
    expect(Math.abs(fall.waterLost)).toBeLessThan(1e-9);
  });

  it('that cooling cannot explain is a leak, with the water that it takes', () => {
    const fall = fallen(3e5);
    expect(fall.verdict).toBe('leak');
    expect(fall.waterLost).toBeGreaterThan(0);
    // 3 bar over the stiffness of water and pipe, near 1.6 GPa.
    expect(fall.waterLost / ((100 * 3e5) / 1.6e9)).toBeGreaterThan(0.8);
    expect(fall.waterLost / ((100 * 3e5) / 1.6e9)).toBeLessThan(1.3);
  });

  it('without any cooling is a leak however small, once it leaves the error of the gauge and what is allowed', () => {
    const still = {
      endTemperature: cooled.startTemperature,
      temperatureError: temperatureDifference.kelvin(0),
      allowedFall: gauge.bar(0),
    };
    const at = (fall: number) =>
      pressureFall({ ...cooled, ...still, endPressure: (cooled.startPressure - fall) as GaugePressure }).verdict;
    expect(at(1.01e4)).toBe('leak');
    expect(at(0.99e4)).toBe('undecided');
  });

  it('is only cooling up to what is allowed less the error of both gauge readings', () => {
    const still = { endTemperature: cooled.startTemperature, temperatureError: temperatureDifference.kelvin(0) };
    const at = (bar: number) =>
      pressureFall({ ...cooled, ...still, endPressure: (cooled.startPressure - bar * 1e5) as GaugePressure }).verdict;
    expect([at(0.399), at(0.401)]).toEqual(['only cooling', 'leak']);
  });

  it('is undecided with a poor thermometer, and when the pressure is higher than the temperatures explain', () => {
    expect(fallen(0, { temperatureError: temperatureDifference.kelvin(0.5) }).verdict).toBe('undecided');
    expect(fallen(-3e5).verdict).toBe('undecided');
  });

  it('never turns from a leak to cooling when more pressure is lost', () => {
    const rank = { 'only cooling': 0, undecided: 1, leak: 2 };
    run(
      fc.property(evenSpan(0, 5e5), evenSpan(0, 5e5), evenSpan(0, 0.3), (fall, more, error) => {
        const change = { temperatureError: error as TemperatureDifference };
        expect(rank[fallen(fall + more, change).verdict]).toBeGreaterThanOrEqual(rank[fallen(fall, change).verdict]);
      }),
    );
  });

  it('is never called cooling by a worse instrument when a better one does not', () => {
    run(
      fc.property(evenSpan(0, 3e5), evenSpan(0, 0.2), evenSpan(0, 0.3), (fall, error, more) => {
        const fine = fallen(fall, { temperatureError: error as TemperatureDifference });
        const coarse = fallen(fall, { temperatureError: (error + more) as TemperatureDifference });
        expect(coarse.fallLeast).toBeLessThanOrEqual(fine.fallLeast);
        expect(coarse.fallMost).toBeGreaterThanOrEqual(fine.fallMost);
        if (fine.verdict !== 'only cooling') expect(coarse.verdict).not.toBe('only cooling');
      }),
    );
  });

  it('is refused where the error reaches beyond the span in which the density of water is known', () => {
    expect(() =>
      pressureFall({
        ...cooled,
        startTemperature: temperature.degC(37.5),
        temperatureError: temperatureDifference.kelvin(1),
      }),
    ).toThrow(/35 degF/u);
  });

  it('of cold water has its bounds where a full pipe turns, not at the ends of the error', () => {
    const cold = { startTemperature: temperature.degC(6.5), endTemperature: temperature.degC(6.5) };
    const error = temperatureDifference.kelvin(2);
    const bounds = pressureFall({ ...cooled, ...cold, temperatureError: error });
    const sharp = { temperatureError: temperatureDifference.kelvin(0) };
    run(
      fc.property(evenSpan(-2, 2), evenSpan(-2, 2), (a, b) => {
        const startTemperature = temperature.degC(6.5 + a);
        const endTemperature = temperature.degC(6.5 + b);
        const fall = pressureFall({ ...cooled, ...sharp, startTemperature, endTemperature });
        expect(fall.fallLeast).toBeGreaterThanOrEqual(bounds.fallLeast - 1e-3);
        expect(fall.fallMost).toBeLessThanOrEqual(bounds.fallMost + 1e-3);
      }),
    );
  });

  it('scales its water with the line', () => {
    expect(fallen(3e5, { volume: volume.m3(200) }).waterLost / fallen(3e5).waterLost).toBeCloseTo(2, 9);
  });
});
