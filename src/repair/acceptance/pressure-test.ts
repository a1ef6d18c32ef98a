import { lineVolume, testPressure } from '../../acceptance/index.js';
import { step } from '../../formula/index.js';
import { reaches } from '../../numeric/index.js';
import { hoopStress } from '../../pipe/index.js';
import { exactly, type GaugePressure, line, roundedDown } from '../../quantity/index.js';
import type { AsFound, LaminateDesign } from '../design/design.js';
import type { PressureTestDesign } from '../design/design-work.js';
import { use, type Workbook, warnCrew } from '../job/workbook.js';
import { resistanceOnDayOfTest } from './day-of-test.js';
import { checkRating } from './lowest-rating.js';
import { gasEnergy, liquidEnergy } from './stored-energy.js';
import { waterOf } from './test-water.js';
import { warnOfWeight } from './weight-of-test.js';

const INSTEAD =
  'no pressure test: raise the line in steps to its working pressure, people away, and look for leaks at each step; thickness, overlap, hardness and bond are checked over the whole repair and signed';

/** How the finished repair is tested under pressure, and with how much energy; never above what it resists that day. */
export function planPressureTest(work: Workbook, found: AsFound, laminate: LaminateDesign): PressureTestDesign {
  const test = pressureTestOf(work, found, resistanceOnDayOfTest(work, laminate));
  if (test.medium !== 'none' && isBeyondRepair(test)) {
    warnCrew(
      work,
      'pressure-test',
      line(
        'The test pressure {0} lies above what the laid laminate resists on the day of the test, {1}: no test is made at that level. The designer lays down another ply, or agrees a lower level with the owner.',
        exactly('test pressure', 'gauge pressure', test.pressure),
        roundedDown('resistance on the day', 'gauge pressure', test.resistance),
      ),
    );
  }
  return test;
}

/** Whether the level of the rule set lies above what the repair resists on the day of the test. */
export function isBeyondRepair({ pressure, resistance }: PressureTestDesign): boolean {
  return !reaches(resistance, pressure);
}

function pressureTestOf(work: Workbook, found: AsFound, resistance: GaugePressure): PressureTestDesign {
  const { recorder, rules, case: repairCase } = work;
  const { service, acceptance } = repairCase;
  const hold = use(work, 'hold of the pressure test', rules.systemTest.hold);
  const factor = use(work, 'factor of the pressure test', rules.systemTest.factor);
  const pressure = step(recorder, 'acceptance/test-pressure', testPressure, {
    pressure: service.designPressure,
    factor,
  });
  const test = acceptance?.pressureTest;
  if (test === undefined) return { medium: 'not stated', pressure, resistance, hold };
  if (test === 'none') return { medium: 'none', pressure, resistance, hold, instead: INSTEAD };
  checkSoundPipe(work, found, pressure);
  checkRating(work, test, pressure);
  const { medium, liquid = 'other' } = test;
  const volume = step(recorder, 'acceptance/line-volume', lineVolume, {
    outsideDiameter: found.outsideDiameter,
    wallThickness: repairCase.pipe.wallThickness,
    length: test.length,
  });
  if (medium === 'gas')
    return { medium, pressure, resistance, hold, volume, ...gasEnergy(work, test, pressure, volume) };
  warnOfWeight(work, volume);
  const water = waterOf(work, found, test, pressure, volume);
  return {
    medium,
    pressure,
    resistance,
    hold,
    volume,
    liquid,
    ...water,
    storedEnergy: liquidEnergy(work, found, pressure, volume),
  };
}

function checkSoundPipe(work: Workbook, { outsideDiameter }: AsFound, pressure: GaugePressure): void {
  const { wallThickness, material } = work.case.pipe;
  const input = { pressure, outsideDiameter, wallThickness };
  const stress = step(work.recorder, 'pipe/hoop-stress', hoopStress, input, 'sound pipe under test');
  if (stress <= material.yieldStrength) return;
  work.reasons.push({
    text: 'the pressure test would make the sound pipe yield: agree on no test with the owner, or lower the design pressure',
    found: exactly('hoop stress of the sound pipe under test', 'stress', stress),
    limit: roundedDown('yield strength', 'stress', material.yieldStrength),
  });
}
