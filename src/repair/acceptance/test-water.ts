import {
  blockedLinePressure,
  pipeStretchFactor,
  pressurePerKelvin,
  warmedTemperature,
  waterCompressionFactor,
  waterToAdd,
  waterVolumeFactor,
} from '../../acceptance/index.js';
import { decide, step } from '../../formula/index.js';
import type { GaugePressure, Ratio, Volume } from '../../quantity/index.js';
import type { AsFound } from '../design/design.js';
import type { PressureTestDesign } from '../design/design-work.js';
import { pipeModulus } from '../found/pipe-modulus.js';
import { assumeQuantity, trial, type Workbook } from '../job/workbook.js';

type TestWater = Pick<PressureTestDesign, 'waterToAdd' | 'testTemperature' | 'pressurePerKelvin'>;

/** What the water of a test does. The volumes of the table are those of water; outside its rows nothing is said. */
export function waterOf(work: Workbook, found: AsFound, pressure: GaugePressure, volume: Volume): TestWater {
  assumeQuantity(work, undefined, {
    name: 'temperature of the test liquid',
    kind: 'temperature',
    value: work.case.site.pipeTemperature,
    tag: 'chosen',
    because: 'taken as water at the temperature of the pipe',
  });
  return trial(work, 'water of the pressure test', () => waterInside(work, found, pressure, volume)).result ?? {};
}

function waterInside(work: Workbook, { outsideDiameter }: AsFound, pressure: GaugePressure, volume: Volume): TestWater {
  const { recorder } = work;
  const { wallThickness } = work.case.pipe;
  const temperature = work.case.site.pipeTemperature;
  const modulus = pipeModulus(work);
  const startWaterFactor = step(recorder, 'acceptance/water-volume-factor', waterVolumeFactor, { temperature });
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
    startWaterFactor,
    endWaterFactor: step(recorder, 'acceptance/water-volume-factor', waterVolumeFactor, {
      temperature: endTemperature,
    }),
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
