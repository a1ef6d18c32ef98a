import psychrolib from 'psychrolib';
import { describe, expect, it } from 'vitest';
import { absolute, type Ratio, temperature } from '../../src/quantity/index.js';
import {
  condensationPoint,
  dewPoint,
  moistAirFromWetBulb,
  relativeHumidity,
  saturationPressure,
  saturationPressureAshrae,
} from '../../src/site/index.js';
import { seeded } from './random.js';

/** Against an independent psychrometrics package (ASHRAE, Hyland and Wexler). */

psychrolib.SetUnitSystem(psychrolib.SI);
const random = seeded('psychrometrics');
const between = (low: number, high: number): number => low + (high - low) * random();

describe('an independent psychrometrics package', () => {
  it('has the same dew points within 0.05 K at and above 0 degC', () => {
    let judged = 0;
    for (let i = 0; i < 2000; i++) {
      const [celsius, humidity] = [between(0, 50), between(0.2, 1)];
      const theirs = psychrolib.GetTDewPointFromRelHum(celsius, humidity);
      if (theirs < 0.02) continue;
      judged++;
      const ours = temperature.inDegC(
        dewPoint({ temperature: temperature.degC(celsius), humidity: humidity as Ratio }),
      );
      if (!(Math.abs(ours - theirs) <= 0.05)) expect.fail(`${celsius} degC, ${humidity}: ${ours} against ${theirs}`);
    }
    expect(judged).toBeGreaterThan(1000);
  });

  it('gives frost points below 0 degC, as the condensation point here does, within 0.05 K', () => {
    let judged = 0;
    for (let i = 0; i < 2000; i++) {
      const [celsius, humidity] = [between(1, 25), between(0.1, 0.6)];
      const theirs = psychrolib.GetTDewPointFromRelHum(celsius, humidity);
      if (theirs > -0.02 || theirs < -25) continue;
      judged++;
      const { point, isFrost } = condensationPoint({
        temperature: temperature.degC(celsius),
        humidity: humidity as Ratio,
      });
      expect(isFrost).toBe(true);
      if (!(Math.abs(temperature.inDegC(point) - theirs) <= 0.05)) {
        expect.fail(`${celsius} degC, ${humidity}: ${temperature.inDegC(point)} against ${theirs}`);
      }
    }
    expect(judged).toBeGreaterThan(300);
  });

  it('has the same humidity from a dew point within 0.3 per cent of it', () => {
    for (let i = 0; i < 500; i++) {
      const celsius = between(1, 50);
      const dew = between(0.02, celsius);
      const theirs = psychrolib.GetRelHumFromTDewPoint(celsius, dew);
      const ours = relativeHumidity({ temperature: temperature.degC(celsius), dewPoint: temperature.degC(dew) });
      expect(Math.abs(ours / theirs - 1)).toBeLessThan(3e-3);
    }
  });

  it('has the saturation pressure of the ASHRAE form to the last digits, and that of Magnus within 0.3 per cent', () => {
    for (let i = 0; i < 500; i++) {
      const celsius = between(-40, 150);
      const theirs = psychrolib.GetSatVapPres(celsius);
      expect(Math.abs(saturationPressureAshrae({ temperature: temperature.degC(celsius) }) / theirs - 1)).toBeLessThan(
        1e-12,
      );
      if (celsius > 0.02 && celsius < 50) {
        expect(Math.abs(saturationPressure({ temperature: temperature.degC(celsius) }) / theirs - 1)).toBeLessThan(
          3e-3,
        );
      }
    }
  });

  it('has the same humidity ratio from a wet bulb', () => {
    let judged = 0;
    for (let i = 0; i < 500; i++) {
      const dry = between(5, 45);
      const wet = between(Math.max(0.5, dry - 10), dry);
      const theirs = psychrolib.GetHumRatioFromTWetBulb(dry, wet, 101325);
      if (theirs <= 1e-5) continue;
      judged++;
      const ours = moistAirFromWetBulb({
        dryBulb: temperature.degC(dry),
        wetBulb: temperature.degC(wet),
        pressure: absolute.Pa(101325),
      });
      expect(Math.abs(ours.humidityRatio / theirs - 1)).toBeLessThan(1e-9);
    }
    expect(judged).toBeGreaterThan(300);
  });
});
