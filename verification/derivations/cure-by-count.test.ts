import { describe, expect } from 'vitest';
import {
  coldestBehindHistory,
  coldestBehindReading,
  cureWaitOverHistory,
  gelConversion,
  highestReading,
  remainingTime,
  warmestBehindReading,
} from '../../src/cure/index.js';
import { activationEnergy, temperature, temperatureDifference, time } from '../../src/quantity/index.js';
import { shift } from './cure-oracles.js';
import { meets, rootOf, secondRoute } from './second-route.js';

/** Cure by generations of a branching tree, by the gain of an interval, and readings tried one after another. */

describe('a mix that gels', () => {
  /** Mean count of other groups of a molecule that have reacted, over every pattern that they can make. */
  const reacted = (others: number, conversion: number): number => {
    let mean = 0;
    for (let pattern = 0; pattern < 2 ** others; pattern++) {
      let [chance, count] = [1, 0];
      for (let group = 0; group < others; group++) {
        const has = ((pattern >> group) & 1) === 1;
        chance *= has ? conversion : 1 - conversion;
        if (has) count++;
      }
      mean += chance * count;
    }
    return mean;
  };

  secondRoute(
    'cure/gel-conversion',
    'physics',
    'the conversion from which on each generation of the tree is larger than the last',
    () => {
      for (const [epoxy, hardener] of [
        [2, 4],
        [2, 5],
        [3, 4],
        [4, 6],
      ] as const) {
        const grows = (conversion: number): number => {
          let molecules = 1;
          for (let generation = 0; generation < 40; generation++)
            molecules *= reacted(epoxy - 1, conversion) * reacted(hardener - 1, conversion);
          return molecules - 1;
        };
        meets(gelConversion({ epoxyFunctionality: epoxy, hardenerFunctionality: hardener }), rootOf(grows, 0.01, 1));
      }
    },
  );
});

describe('a cure that goes on', () => {
  const two = { mechanism: 'two-part reaction', minimumTemperature: temperature.degC(10) } as const;
  const energy = 55_000;

  /** Equivalent time that a history has gained by a clock time: each step as far as it has come. */
  const gainedBy = (steps: readonly (readonly [hours: number, celsius: number])[], clock: number): number => {
    let [start, gained] = [0, 0];
    for (const [hours, celsius] of steps) {
      const inStep = Math.max(0, Math.min(hours, clock - start));
      if (celsius >= 10) gained += inStep * shift(energy, 293.15, celsius + 273.15);
      start += hours;
    }
    return gained;
  };

  secondRoute(
    'cure/cure-wait-over-history',
    'mathematics',
    'the clock time at which the gain of the whole history is what is needed',
    () => {
      for (const steps of [
        [
          [4, 25],
          [8, 8],
          [30, 15],
        ],
        [
          [6, 12],
          [6, 18],
          [60, 31],
        ],
        [[80, 16]],
      ] as const) {
        const clock = rootOf((at) => gainedBy(steps, at) - 24, 0, 200);
        const found = cureWaitOverHistory({
          ...two,
          steps: steps.map(([hours, celsius]) => ({
            duration: time.hour(hours),
            temperature: temperature.degC(celsius),
          })),
          requiredTime: time.hour(24),
          referenceTemperature: temperature.degC(20),
          activationEnergy: activationEnergy.JPerMol(energy),
        });
        meets(time.inHour(found.wait), clock);
        meets(time.inHour(found.shortest), clock);
      }
    },
  );

  secondRoute(
    'cure/remaining-time',
    'mathematics',
    'the time at which what is gained and what is credited are what is needed',
    () => {
      for (const [credited, celsius] of [
        [10, 14],
        [3, 33],
      ] as const) {
        const left = rootOf((at) => credited + gainedBy([[1e4, celsius]], at) - 24, 0, 1e3);
        const found = remainingTime({
          ...two,
          requiredTime: time.hour(24),
          creditedTime: time.hour(credited),
          referenceTemperature: temperature.degC(20),
          temperature: temperature.degC(celsius),
          activationEnergy: activationEnergy.JPerMol(energy),
        });
        meets(time.inHour(found), left);
      }
      const done = remainingTime({
        ...two,
        requiredTime: time.hour(24),
        creditedTime: time.hour(30),
        referenceTemperature: temperature.degC(20),
        temperature: temperature.degC(20),
        activationEnergy: activationEnergy.JPerMol(energy),
      });
      expect(done).toBe(0);
    },
  );
});

describe('a thermometer that may be off either way', () => {
  /** Whether it may show a reading, in tenths of a degree, at a true temperature. */
  const mayShow = (reading: number, truth: number, error: number): boolean => Math.abs(reading - truth) <= error;

  secondRoute(
    'cure/highest-reading',
    'arithmetic',
    'readings raised a tenth at a time until steel behind one may be too warm',
    () => {
      for (const [warmest, error] of [
        [400, 10],
        [355, 25],
      ] as const) {
        const safe = (reading: number): boolean => {
          for (let truth = warmest + 1; truth < 1000; truth++) if (mayShow(reading, truth, error)) return false;
          return true;
        };
        let reading = -200;
        while (safe(reading + 1)) reading++;
        const found = highestReading({
          warmest: temperature.degC(warmest / 10),
          error: temperatureDifference.kelvin(error / 10),
        });
        meets(found, 273.15 + reading / 10);
      }
    },
  );

  secondRoute(
    'cure/coldest-behind-reading',
    'arithmetic',
    'the coldest of all temperatures that may show the reading',
    () => {
      for (const [reading, error] of [
        [188, 10],
        [-55, 25],
      ] as const) {
        let coldest = Number.POSITIVE_INFINITY;
        for (let truth = 1000; truth > -1000; truth--) if (mayShow(reading, truth, error)) coldest = truth;
        const found = coldestBehindReading({
          reading: temperature.degC(reading / 10),
          error: temperatureDifference.kelvin(error / 10),
        });
        meets(found, 273.15 + coldest / 10);
      }
    },
  );

  secondRoute(
    'cure/coldest-behind-history',
    'arithmetic',
    'the coldest of all temperatures that may show each reading of a night',
    () => {
      const readings = [212, 145, 98, 160];
      const coldest = readings.map((reading) => {
        let truth = reading;
        while (mayShow(reading, truth - 1, 15)) truth--;
        return truth;
      });
      const found = coldestBehindHistory({
        steps: readings.map((reading) => ({ duration: time.hour(3), temperature: temperature.degC(reading / 10) })),
        error: temperatureDifference.kelvin(1.5),
      });
      for (const [index, truth] of coldest.entries()) {
        meets(found.steps[index]?.temperature ?? Number.NaN, 273.15 + truth / 10);
        meets(found.steps[index]?.duration ?? Number.NaN, 3 * 3600);
      }
      meets(found.coldest, 273.15 + Math.min(...coldest) / 10);
    },
  );

  secondRoute(
    'cure/warmest-behind-reading',
    'arithmetic',
    'the warmest of all temperatures that may show the reading',
    () => {
      for (const [reading, error] of [
        [312, 10],
        [-55, 25],
      ] as const) {
        let warmest = Number.NEGATIVE_INFINITY;
        for (let truth = -500; truth < 1000; truth++) if (mayShow(reading, truth, error)) warmest = truth;
        const found = warmestBehindReading({
          reading: temperature.degC(reading / 10),
          error: temperatureDifference.kelvin(error / 10),
        });
        meets(found, 273.15 + warmest / 10);
      }
    },
  );
});
