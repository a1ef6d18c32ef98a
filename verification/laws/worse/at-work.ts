import type { RepairCase } from '../../../src/repair/index.js';
import { change, less, times, type Worsening } from './worsening.js';

/** The day of the work and the leak: more pressure under the hands, a larger seal, colder steel, hours that are not foreseen. */

type Seal = NonNullable<RepairCase['seal']>;

function withSeal(base: RepairCase, fields: Partial<Seal>): RepairCase | undefined {
  return base.seal === undefined ? undefined : { ...base, seal: { ...base.seal, ...fields } };
}

/** The pad as wide as any reading of its multiple makes it. */
function padAcross({ seal, defect }: RepairCase): number {
  const hole = defect.holeDiameter ?? 0;
  return seal === undefined ? 0 : Math.max(hole * seal.pad.multiple, hole + 2 * seal.pad.margin);
}

/** All steel and air of the day, by so many kelvin; never colder than water freezes. */
function shifted(base: RepairCase, by: number): RepairCase {
  const to = <T extends number>(value: T): T => Math.max(283.15, value + by) as T;
  const { site } = base;
  return {
    ...base,
    site: {
      ...site,
      pipeTemperature: to(site.pipeTemperature),
      airTemperature: to(site.airTemperature),
      history: site.history?.map((step) => ({ ...step, temperature: to(step.temperature) })),
      forecast: site.forecast?.map((step) => ({
        ...step,
        pipeTemperature: to(step.pipeTemperature),
        airTemperature: to(step.airTemperature),
      })),
    },
  };
}

export const atWork: readonly Worsening[] = [
  {
    name: 'more pressure while people work',
    of: (base, factor) => {
      if (base.line.state === 'empty, dry, isolated, vented') return undefined;
      const pressure = times(base.line.pressure, factor);
      return pressure > base.service.designPressure ? undefined : { ...base, line: { ...base.line, pressure } };
    },
  },
  {
    name: 'a higher surge',
    of: (base, factor) => {
      const { surge, designPressure } = base.service;
      const from = typeof surge === 'number' ? surge : designPressure;
      return change(base, 'service', { surge: times(from, factor) });
    },
  },
  {
    name: 'a worse reading of the wall',
    of: (base, factor) => {
      const { readingError, remainingWall } = base.defect;
      const from = readingError === 'none' ? 0 : readingError;
      return change(base, 'defect', { readingError: (from + 0.2 * (factor - 1) * remainingWall) as never });
    },
  },
  {
    name: 'a larger sheet on the leak',
    of: (base, factor) => {
      const { seal } = base;
      if (seal?.sheet.across === undefined) return undefined;
      // One that is smaller than its pad is refused, and a larger one is its remedy.
      if (seal.sheet.across < padAcross(base)) return undefined;
      return withSeal(base, { sheet: { ...seal.sheet, across: times(seal.sheet.across, factor) } });
    },
  },
  {
    name: 'a larger collar on the leak',
    of: (base, factor) =>
      withSeal(base, {
        collar:
          base.seal?.collar === 'none' ? ((0.1 * factor) as never) : times(base.seal?.collar ?? (0 as never), factor),
      }),
  },
  {
    name: 'hours that are foreseen less far',
    of: (base, factor) => {
      const cut = <T extends { readonly duration: number }>(hours: readonly T[] | undefined): T[] | undefined =>
        hours?.map((hour, index) =>
          index < hours.length - 1 ? hour : { ...hour, duration: hour.duration / factor ** 8 },
        );
      const { history, forecast } = base.site;
      if (history === undefined && forecast === undefined) return undefined;
      return change(base, 'site', { history: cut(history), forecast: cut(forecast) });
    },
  },
  {
    name: 'a slower crew',
    of: (base, factor) =>
      base.crew === undefined
        ? undefined
        : { ...base, crew: { ...base.crew, layingSpeed: less(base.crew.layingSpeed, factor) } },
  },
  {
    name: 'a thermometer that is farther off',
    of: (base, factor) =>
      change(base, 'site', { instruments: { temperatureError: (4 * factor) as never, humidityError: 0.02 as never } }),
  },
  {
    name: 'a colder day',
    demands: 'no shorter wait',
    of: (base, factor) => shifted(base, -16 * (factor - 1)),
  },
  {
    name: 'a filler that is called as the laminate is',
    demands: 'the same',
    of: (base) =>
      base.filler === 'none' ? undefined : { ...base, filler: { ...base.filler, name: base.laminate.name } },
  },
  {
    name: 'a sound pipe above its allowable stress',
    demands: 'a warning more',
    of: (base) => {
      const { outsideDiameter, wallThickness, material } = base.pipe;
      const hoop = (base.service.designPressure * (outsideDiameter as number)) / (2 * wallThickness);
      const fields = { material: { ...material, allowableStress: (0.8 * hoop) as never } };
      return material.allowableStress === undefined || material.allowableStress < hoop
        ? undefined
        : change(base, 'pipe', fields);
    },
  },
  {
    name: 'a lower rating within the test',
    of: (base, factor) => {
      const test = base.acceptance?.pressureTest;
      if (base.acceptance === undefined || test === undefined || test === 'none' || test.lowestRating === undefined)
        return undefined;
      const pressureTest = { ...test, lowestRating: less(test.lowestRating, factor ** 3) };
      return { ...base, acceptance: { ...base.acceptance, pressureTest } };
    },
  },
  { name: 'a worse hazard', of: (base) => change(base, 'service', { hazards: [...base.service.hazards, 'toxic'] }) },
  {
    name: 'gas in place of liquid',
    of: (base) =>
      base.line.state === 'static head' || base.seal !== undefined
        ? undefined
        : change(base, 'service', { phase: 'gas' }),
  },
  {
    name: 'long-term tests at a lower temperature',
    of: (base, factor) => {
      const { longTermStrength: given } = base.laminate;
      if (given?.testTemperature === undefined) return undefined;
      const testTemperature = (given.testTemperature - 60 * (factor - 1)) as typeof given.testTemperature;
      return change(base, 'laminate', { longTermStrength: { ...given, testTemperature } });
    },
  },
  {
    name: 'a warm laminate that is softer',
    of: (base, factor) => {
      const { atDesignTemperature: warm } = base.laminate;
      if (warm === undefined) return undefined;
      const { energyReleaseRate, hoopModulus, axialModulus } = warm;
      const softer = {
        energyReleaseRate,
        hoopModulus: less(hoopModulus, factor),
        axialModulus: less(axialModulus, factor),
      };
      return change(base, 'laminate', { atDesignTemperature: softer });
    },
  },
];
