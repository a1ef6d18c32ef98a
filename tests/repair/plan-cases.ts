import { absolute, gauge, length, ratio, speed, temperature, time } from '../../src/quantity/index.js';
import type { RepairCase } from '../../src/repair/index.js';
import { partWall, sealed } from './example-case.js';

/** Cases with what the work on site needs; invented data. */
const onSite = {
  crew: { layingSpeed: speed.mPerMin(2), crews: 1, start: '07:30' },
  acceptance: {
    hardnessScale: 'Shore D',
    qualifiedHardness: 80,
    pressureTest: {
      medium: 'liquid',
      liquid: 'fresh water',
      length: length.m(30),
      lowestRating: gauge.bar(100),
      atmosphere: absolute.bar(1.013),
    },
  },
} as const satisfies Partial<RepairCase>;

export const planned: RepairCase = {
  ...partWall,
  ...onSite,
  site: {
    ...partWall.site,
    forecast: [
      {
        duration: time.hour(12),
        pipeTemperature: temperature.degC(20),
        airTemperature: temperature.degC(22),
        relativeHumidity: ratio.percent(60),
      },
      {
        duration: time.hour(12),
        pipeTemperature: temperature.degC(14),
        airTemperature: temperature.degC(12),
        relativeHumidity: ratio.percent(70),
      },
      {
        duration: time.hour(72),
        pipeTemperature: temperature.degC(18),
        airTemperature: temperature.degC(18),
        relativeHumidity: ratio.percent(60),
      },
    ],
    surface: { grade: 'Sa 2 1/2', profile: length.mm(0.07) },
  },
};

export const plannedLeak: RepairCase = { ...sealed, ...onSite };

/** Tape that brings its own resin, activated by water: a roll has to lie within its working time. */
export const waterTape: RepairCase = {
  ...planned,
  resin: 'none',
  crew: { ...onSite.crew, soakTime: time.minute(0.5) },
};
