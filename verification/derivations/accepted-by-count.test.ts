import { describe, expect } from 'vitest';
import {
  hardnessGate,
  leastThickness,
  pressureFall,
  pressurePerKelvin,
  waterWarmingFactor,
  wrinkleLimit,
} from '../../src/acceptance/index.js';
import { gauge, length, type Ratio, temperature, temperatureDifference, volume } from '../../src/quantity/index.js';
import { gateByReadings, pressureByVolumes, statisticsByPairs, waterDensity, waterHeld } from './acceptance.js';
import { meets, rootOf, secondRoute } from './second-route.js';

/** Acceptance by readings, plies and the water in the line. */

describe('a laminate that is judged', () => {
  secondRoute(
    'acceptance/hardness-gate',
    'mathematics',
    'the mean of all pairs and every reading against its share',
    () => {
      for (const readings of [
        [82, 78, 85, 80, 79],
        [82, 66, 85, 80, 79],
        [71, 72, 70, 75, 73, 74],
      ]) {
        const other = statisticsByPairs(readings);
        const found = hardnessGate({ scale: 'Shore D', readings, qualifiedHardness: 84 });
        meets(found.mean, other.mean);
        meets(found.fraction, other.mean / 84);
        meets(found.standardDeviation, other.deviation);
        meets(found.leastFraction, (other.least ?? 0) / 84);
        expect(found.passes).toBe(gateByReadings(readings, 84, 5));
      }
    },
  );

  secondRoute(
    'acceptance/least-thickness',
    'arithmetic',
    'plies and thousandths laid until both demands are met',
    () => {
      for (const [required, plies, ply] of [
        [4200, 4, 800],
        [1500, 4, 800],
        [0, 2, 333],
      ] as const) {
        let thickness = 0;
        while (thickness < required || Math.floor(thickness / ply) < plies) thickness++;
        const found = leastThickness({
          requiredThickness: length.um(required),
          leastPlies: plies,
          plyThickness: length.um(ply),
          systemPly: length.um(ply),
        });
        meets(length.inMm(found) * 1000, thickness);
      }
    },
  );

  secondRoute(
    'acceptance/wrinkle-limit',
    'arithmetic',
    'thousandths of height raised until either limit is passed',
    () => {
      for (const thickness of [5000, 12_500, 30_000]) {
        let height = 0;
        while (height + 1 <= 2500 && 5 * (height + 1) <= thickness) height++;
        meets(length.inMm(wrinkleLimit({ laminateThickness: length.um(thickness) })) * 1000, height);
      }
    },
  );
});

describe('the water of a blocked line', () => {
  const pipe = { D: 0.3239, t: 0.0095 };
  /** Volume of water over that at 60 degF, by the density of Kell. */
  const swollen = (kelvin: number): number => waterDensity((60 - 32) / 1.8) / waterDensity(kelvin - 273.15);

  secondRoute(
    'acceptance/pressure-fall',
    'physics',
    'the pressure at which the line still holds its water, and the water that it no longer holds',
    () => {
      for (const [start, end, from, to] of [
        [10e6, 8.2e6, 295, 291],
        [6e6, 6.9e6, 290, 293.5],
      ] as const) {
        const found = pressureFall({
          startPressure: gauge.Pa(start),
          endPressure: gauge.Pa(end),
          startTemperature: temperature.kelvin(from),
          endTemperature: temperature.kelvin(to),
          pressureError: gauge.kPa(20),
          temperatureError: temperatureDifference.kelvin(0.1),
          allowedFall: gauge.kPa(0),
          volume: volume.m3(100),
          outsideDiameter: length.m(pipe.D),
          wallThickness: length.m(pipe.t),
        });
        meets(found.fallExpected, start - pressureByVolumes(pipe, start, from, to, swollen), 1e-6);
        meets(found.fallSeen, start - end);
        const held = (P: number, T: number): number => waterHeld(pipe, P, T, swollen(T));
        meets(found.waterLost, 100 * (held(start, from) - held(end, to)), 1e-6);
      }
    },
  );

  secondRoute(
    'acceptance/pressure-per-kelvin',
    'arithmetic',
    'halving the line between two pressures until it is one step on',
    () => {
      for (const [P1, P2, T1, T2, step] of [
        [10e6, 8.7e6, 295, 291, 1],
        [6e6, 6.4e6, 290, 291.5, 0.25],
      ] as const) {
        const at = (T: number): number => {
          let [low, high] =
            T1 < T2
              ? [
                  { T: T1, P: P1 },
                  { T: T2, P: P2 },
                ]
              : [
                  { T: T2, P: P2 },
                  { T: T1, P: P1 },
                ];
          let middle: { T: number; P: number } = low;
          for (let i = 0; i < 70; i++) {
            middle = { T: (low.T + high.T) / 2, P: (low.P + high.P) / 2 };
            if (middle.T > T) high = middle as typeof high;
            else low = middle as typeof low;
          }
          return middle.P;
        };
        const middle = (T1 + T2) / 2;
        const found = pressurePerKelvin({
          startPressure: gauge.Pa(P1),
          endPressure: gauge.Pa(P2),
          startTemperature: temperature.kelvin(T1),
          endTemperature: temperature.kelvin(T2),
          step: temperatureDifference.kelvin(step),
        });
        meets(found, at(middle + step / 2) - at(middle - step / 2), 1e-8);
      }
    },
  );

  secondRoute(
    'acceptance/water-warming-factor',
    'arithmetic',
    'the volume, measured cold, of the water that a warm pipe holds',
    () => {
      for (const [pipeFactor, waterFactor] of [
        [0.999818, 0.9993061],
        [1.000364, 1.0031919],
      ] as const) {
        // A cubic metre of pipe, warm, holds water that cold would fill the volume sought, of a density of 1 there.
        const mass = pipeFactor * (1 / waterFactor);
        const cold = rootOf((V) => V * 1 - mass, 0, 2);
        meets(waterWarmingFactor({ pipeFactor: pipeFactor as Ratio, waterFactor: waterFactor as Ratio }), cold);
      }
    },
  );
});
