import {
  blockedLinePressure,
  pipeStretchFactor,
  pressurePerKelvin,
  warmedTemperature,
  waterCompressionFactor,
  waterDensity,
  waterSwelling,
  waterToAdd,
} from '../../acceptance/index.js';
import { decide, step } from '../../formula/index.js';
import type { GaugePressure, Ratio, Temperature, Volume } from '../../quantity/index.js';
import type { PressureTest } from '../case/case.js';
import type { AsFound } from '../design/design.js';
import type { PressureTestDesign } from '../design/design-work.js';
import { pipeModulus } from '../found/pipe-modulus.js';
import { assumeQuantity, trial, type Workbook, warnCrew } from '../job/workbook.js';

type TestWater = Pick<PressureTestDesign, 'waterToAdd' | 'testTemperature' | 'pressurePerKelvin'>;

/** What the water of a test does, where it is fresh; of another liquid, and outside its span, nothing is said. */
export function waterOf(
  work: Workbook,
  found: AsFound,
  { liquid }: PressureTest,
  pressure: GaugePressure,
  volume: Volume,
): TestWater {
  if (liquid !== 'fresh water') {
    warnCrew(
      work,
      'pressure-test',
      liquid === 'other'
        ? 'The line is tested with another liquid than fresh water: what goes in to reach the pressure and how it moves with the temperature is not known here, and a fall of pressure is not put down to cooling.'
        : 'The case does not name the test liquid, which then counts as other than fresh water: a fall of pressure is not put down to cooling. State fresh water if that is what fills the line.',
    );
    return {};
  }
  assumeQuantity(work, undefined, {
    name: 'temperature of the test liquid',
    kind: 'temperature',
    value: work.case.site.pipeTemperature,
    tag: 'chosen',
    because: 'taken at the temperature of the pipe',
  });
  return trial(work, 'water of the pressure test', () => waterInside(work, found, pressure, volume)).result ?? {};
}

function waterInside(work: Workbook, { outsideDiameter }: AsFound, pressure: GaugePressure, volume: Volume): TestWater {
  const { recorder } = work;
  const { wallThickness } = work.case.pipe;
  const temperature = work.case.site.pipeTemperature;
  const modulus = pipeModulus(work);
  decide(
    recorder,
    'water to add is counted from a full line at the temperature of the test',
    'it is filled at that temperature',
  );
  const compressionFactor = step(recorder, 'acceptance/water-compression-factor', waterCompressionFactor, { pressure });
  const stretchFactor = step(recorder, 'acceptance/pipe-stretch-factor', pipeStretchFactor, {
    pressure,
    temperature,
    referenceTemperature: temperature,
    modulus,
    outsideDiameter,
    wallThickness,
  });
  const added = step(recorder, 'acceptance/water-to-add', waterToAdd, {
    volume,
    compressionFactor,
    stretchFactor,
    warmingFactor: 1 as Ratio,
  });
  const endTemperature = step(recorder, 'acceptance/warmed-temperature', warmedTemperature, { temperature });
  const endPressure = step(recorder, 'acceptance/blocked-line-pressure', blockedLinePressure, {
    pressure,
    startTemperature: temperature,
    endTemperature,
    startWaterFactor: swellingAt(work, temperature),
    endWaterFactor: swellingAt(work, endTemperature),
    modulus,
    outsideDiameter,
    wallThickness,
  });
  return {
    waterToAdd: added.waterToAdd,
    testTemperature: temperature,
    pressurePerKelvin: step(recorder, 'acceptance/pressure-per-kelvin', pressurePerKelvin, {
      startPressure: pressure,
      endPressure,
      startTemperature: temperature,
      endTemperature,
    }),
  };
}

function swellingAt({ recorder }: Workbook, temperature: Temperature): Ratio {
  const density = step(recorder, 'acceptance/water-density', waterDensity, { temperature });
  return step(recorder, 'acceptance/water-swelling', waterSwelling, { density });
}
