import {
  blockedLinePressure,
  gasEnergyIsentropic,
  lineVolume,
  liquidTestEnergy,
  pipeStretchFactor,
  testDistance,
  testDistanceEnergyAboveRule,
  testPressure,
  tntEquivalent,
  waterCompressionFactor,
  waterToAdd,
  waterVolumeFactor,
} from '../../acceptance/index.js';
import { decide, step } from '../../formula/index.js';
import { hoopStress } from '../../pipe/index.js';
import { type GaugePressure, type Length, type Ratio, type Temperature, toAbsolute } from '../../quantity/index.js';
import type { PressureTest } from '../case/case.js';
import type { AsFound, LaminateDesign } from '../design/design.js';
import type { PressureTestDesign } from '../design/design-work.js';
import { pipeModulus } from '../found/pipe-modulus.js';
import { assumeQuantity, assumeWord, trial, use, type Workbook, warn } from '../job/workbook.js';

/** How the finished repair is tested under pressure, and with how much energy. */
export function planPressureTest(work: Workbook, found: AsFound, { resistance }: LaminateDesign): PressureTestDesign {
  const test = pressureTestOf(work, found);
  // Plies are whole and the design strain is a long-term one: a test may lie above it, and the reader has to know.
  if (test.medium !== 'none' && test.pressure > resistance.value) {
    warn(
      work,
      'The test pressure lies above what the laid thickness resists by its long-term allowables: agree the level with the competent person, or lay one ply more.',
    );
  }
  return test;
}

function pressureTestOf(work: Workbook, found: AsFound): PressureTestDesign {
  const { recorder, rules, case: repairCase } = work;
  const { service, acceptance } = repairCase;
  const hold = use(work, 'hold of the pressure test', rules.systemTest.hold);
  const factor = use(work, 'factor of the pressure test', rules.systemTest.factor);
  const pressure = step(recorder, 'acceptance/test-pressure', testPressure, {
    pressure: service.designPressure,
    factor,
  });
  const test = acceptance?.pressureTest;
  if (test === undefined) return { medium: 'not stated', pressure, hold };
  if (test === 'none') {
    return {
      medium: 'none',
      pressure,
      hold,
      instead:
        'no pressure test: raise the line in steps to its working pressure, people away, and look for leaks at each step; thickness, overlap, hardness and bond are checked over the whole repair and signed',
    };
  }
  checkSoundPipe(work, found, pressure);
  const volume = step(recorder, 'acceptance/line-volume', lineVolume, { ...pipeOf(work, found), length: test.length });
  const base = { medium: test.medium, pressure, hold, volume };
  if (pressure === 0) return base;
  return test.medium === 'gas'
    ? { ...base, ...gasEnergy(work, test, base) }
    : { ...base, ...waterOf(work, found, base), storedEnergy: liquidEnergy(work, found, base) };
}

type Filled = Required<Pick<PressureTestDesign, 'pressure' | 'volume'>>;

function pipeOf({ case: { pipe } }: Workbook, { outsideDiameter }: AsFound) {
  return { outsideDiameter, wallThickness: pipe.wallThickness };
}

function checkSoundPipe(work: Workbook, found: AsFound, pressure: GaugePressure): void {
  const { yieldStrength } = work.case.pipe.material;
  const stress = step(
    work.recorder,
    'pipe/hoop-stress',
    hoopStress,
    { pressure, ...pipeOf(work, found) },
    'sound pipe under test',
  );
  if (stress > yieldStrength) warn(work, 'The sound pipe would yield at the test pressure: lower it.');
}

function gasEnergy(work: Workbook, { atmosphere }: PressureTest, { pressure, volume }: Filled) {
  const { recorder } = work;
  const heatCapacityRatio = 1.4;
  assumeWord(
    work,
    'gas of the pressure test',
    'air or nitrogen, ratio of heat capacities 1.4',
    'secondary',
    'the case names no gas',
  );
  const energy = step(recorder, 'acceptance/gas-energy-isentropic', gasEnergyIsentropic, {
    pressure: toAbsolute(pressure, atmosphere),
    volume,
    atmosphere,
    heatCapacityRatio,
  });
  const distance = step(recorder, 'acceptance/test-distance', testDistance, { energy });
  if (testDistanceEnergyAboveRule({ energy })) {
    warn(
      work,
      'The gas of the pressure test stores more energy than the rule for the distance covers: study it first.',
    );
  }
  warn(
    work,
    'A test with gas stores far more energy than one with liquid: test with liquid wherever that can be done.',
  );
  return {
    storedEnergy: energy,
    tntEquivalent: step(recorder, 'acceptance/tnt-equivalent', tntEquivalent, { energy }),
    distance,
  };
}

function liquidEnergy(work: Workbook, found: AsFound, { pressure, volume }: Filled) {
  const { wallThickness } = work.case.pipe;
  const insideDiameter = (found.outsideDiameter - 2 * wallThickness) as Length;
  return step(work.recorder, 'acceptance/liquid-test-energy', liquidTestEnergy, {
    pressure,
    volume,
    insideDiameter,
    wallThickness,
    modulus: pipeModulus(work),
  }).total;
}

/** The volumes of the table are those of water; outside its rows nothing is said. */
function waterOf(work: Workbook, found: AsFound, { pressure, volume }: Filled) {
  assumeQuantity(work, undefined, {
    name: 'temperature of the test liquid',
    kind: 'temperature',
    value: work.case.site.pipeTemperature,
    tag: 'chosen',
    because: 'taken as water at the temperature of the pipe',
  });
  const { result } = trial(work, 'water of the pressure test', () => fillWith(work, found, pressure, volume));
  return result ?? {};
}

function fillWith(work: Workbook, found: AsFound, pressure: GaugePressure, volume: Filled['volume']) {
  const { recorder } = work;
  const temperature = work.case.site.pipeTemperature;
  const pipe = pipeOf(work, found);
  const waterFactor = step(recorder, 'acceptance/water-volume-factor', waterVolumeFactor, { temperature });
  decide(
    recorder,
    'water to add is counted from a full line at the temperature of the test',
    'it is filled at that temperature',
  );
  const added = step(recorder, 'acceptance/water-to-add', waterToAdd, {
    volume,
    compressionFactor: step(recorder, 'acceptance/water-compression-factor', waterCompressionFactor, { pressure }),
    stretchFactor: step(recorder, 'acceptance/pipe-stretch-factor', pipeStretchFactor, {
      pressure,
      temperature,
      referenceTemperature: temperature,
      modulus: pipeModulus(work),
      ...pipe,
    }),
    warmingFactor: 1 as Ratio,
  });
  // One kelvin up, or down at the upper end of the rows of the table.
  const way = temperature > 309 ? -1 : 1;
  const endTemperature = (temperature + way) as Temperature;
  const after = step(recorder, 'acceptance/blocked-line-pressure', blockedLinePressure, {
    pressure,
    startTemperature: temperature,
    endTemperature,
    startWaterFactor: waterFactor,
    endWaterFactor: step(recorder, 'acceptance/water-volume-factor', waterVolumeFactor, {
      temperature: endTemperature,
    }) as Ratio,
    ...pipe,
  });
  return {
    waterToAdd: added.waterToAdd,
    testTemperature: temperature,
    pressurePerKelvin: (way * (after - pressure)) as GaugePressure,
  };
}
