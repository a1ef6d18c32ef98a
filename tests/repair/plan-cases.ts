import { absolute, degC, hour, m, minute, mm, mPerMin, ratio } from '../../src/quantity/index.js';
import type { RepairCase } from '../../src/repair/index.js';
import { partWall, sealed } from './example-case.js';

/** Cases with what the work on site needs; invented data. */
const onSite = {
  crew: { layingSpeed: mPerMin(2), crews: 1, start: '07:30' },
  acceptance: {
    hardnessScale: 'Shore D',
    qualifiedHardness: 80,
    pressureTest: { medium: 'liquid', length: m(30), atmosphere: absolute.bar(1.013) },
  },
} as const satisfies Partial<RepairCase>;

export const planned: RepairCase = {
  ...partWall,
  ...onSite,
  site: {
    ...partWall.site,
    forecast: [
      { duration: hour(12), pipeTemperature: degC(20), airTemperature: degC(22), relativeHumidity: ratio.percent(60) },
      { duration: hour(12), pipeTemperature: degC(14), airTemperature: degC(12), relativeHumidity: ratio.percent(70) },
      { duration: hour(72), pipeTemperature: degC(18), airTemperature: degC(18), relativeHumidity: ratio.percent(60) },
    ],
    surface: { grade: 'Sa 2 1/2', profile: mm(0.07) },
  },
};

export const plannedLeak: RepairCase = { ...sealed, ...onSite };

/** Tape that brings its own resin, activated by water: a roll has to lie within its working time. */
export const waterTape: RepairCase = {
  ...planned,
  resin: 'none',
  crew: { ...onSite.crew, soakTime: minute(0.5) },
};
