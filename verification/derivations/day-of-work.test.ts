import { describe, expect } from 'vitest';
import {
  absolute,
  area,
  arealWeight,
  conductivity,
  type Ratio,
  temperature,
  temperatureDifference,
  time,
  volume,
} from '../../src/quantity/index.js';
import {
  condensationPoint,
  elapsedTime,
  leastSteelReading,
  saturationPressureOverIce,
  solubleSalts,
} from '../../src/site/index.js';
import { meets, secondRoute } from './second-route.js';
import { condensationByBisection } from './vapour-oracles.js';

/** The air and the steel on the day, by thermodynamics, by search and by count. */

describe('vapour over ice', () => {
  secondRoute(
    'site/saturation-pressure-over-ice',
    'physics',
    'the law of Clausius and Clapeyron from the triple point down',
    () => {
      /** Heat of sublimation [J/mol] (Murphy and Koop 2005), from memory. */
      const heat = (T: number): number =>
        46782.5 + 35.8925 * T - 0.07414 * T * T + 541.5 * Math.exp(-((T / 123.75) ** 2));
      const R = 8.314462618;
      /** Vapour takes a little less room than an ideal gas: second virial coefficient near -1.8e-3 m3/mol, from memory. */
      const room = (T: number, pressure: number): number => 1 - (1.8e-3 * (273 / T) ** 5 * pressure) / (R * T);
      for (const celsius of [-5, -10, -20, -30]) {
        const [from, to, steps] = [273.16, celsius + 273.15, 4000];
        const dT = (to - from) / steps;
        let log = Math.log(611.657);
        for (let i = 0; i < steps; i++) {
          const T = from + (i + 0.5) * dT;
          log += (heat(T) / (room(T, Math.exp(log)) * R * T * T)) * dT;
        }
        const found = saturationPressureOverIce({ temperature: temperature.degC(celsius) });
        meets(absolute.inPa(found), Math.exp(log), 2e-4);
      }
    },
  );

  secondRoute(
    'site/condensation-point',
    'mathematics',
    'bisection on the pressure of the vapour, over water or over ice',
    () => {
      for (const [celsius, humidity] of [
        [25, 0.6],
        [10, 0.9],
        [4, 0.5],
        [-8, 0.7],
      ] as const) {
        const other = condensationByBisection(celsius, humidity);
        const found = condensationPoint({ temperature: temperature.degC(celsius), humidity: humidity as Ratio });
        meets(found.point, other + 273.15);
        expect(found.isFrost).toBe(other < 0);
      }
    },
  );
});

describe('readings of the day', () => {
  secondRoute(
    'site/least-steel-reading',
    'arithmetic',
    'readings raised a tenth at a time until no steel behind one is too cold',
    () => {
      for (const [least, error] of [
        [100, 10],
        [-50, 5],
        [50, 25],
      ] as const) {
        let reading = -500;
        // The thermometer may read too high by its error, so that the steel is as cold as that below it.
        while (reading - error < least || reading - error < 0) reading++;
        const found = leastSteelReading({
          minimumTemperature: temperature.degC(least / 10),
          thermometerError: temperatureDifference.kelvin(error / 10),
        });
        meets(found, 273.15 + reading / 10);
      }
    },
  );

  secondRoute('site/elapsed-time', 'arithmetic', 'minutes from one hour of the job to the other', () => {
    for (const [from, to] of [
      [-90, 45],
      [480, 1925],
    ] as const) {
      let minutes = 0;
      for (let now = from as number; now < to; now++) minutes++;
      meets(time.inMinute(elapsedTime({ from: time.minute(from), to: time.minute(to) })), minutes);
    }
  });

  secondRoute(
    'site/soluble-salts',
    'arithmetic',
    'drops of water that each bring the salt that their conductivity shows',
    () => {
      for (const [drops, cells, microsiemens] of [
        [300, 1250, 7],
        [60, 1250, 33.5],
        [200, 1600, 12],
      ] as const) {
        // A drop of 0.05 mL holds 0.5 ug of salt to the mL for every uS/cm; the patch is counted in square millimetres.
        let micrograms = 0;
        for (let drop = 0; drop < drops; drop++) micrograms += 0.05 * 0.5 * microsiemens;
        const found = solubleSalts({
          waterVolume: volume.mL(drops * 0.05),
          area: area.mm2(cells),
          conductivityRise: conductivity.uSPerCm(microsiemens),
        });
        meets(arealWeight.inMgPerM2(found), (micrograms / 1000 / cells) * 1e6);
      }
    },
  );
});
