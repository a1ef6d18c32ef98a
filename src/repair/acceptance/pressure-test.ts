import { lineVolume, testPressure } from '../../acceptance/index.js';
import { step } from '../../formula/index.js';
import { hoopStress } from '../../pipe/index.js';
import type { GaugePressure } from '../../quantity/index.js';
import type { AsFound, LaminateDesign } from '../design/design.js';
import type { PressureTestDesign } from '../design/design-work.js';
import { use, type Workbook, warn } from '../job/workbook.js';
import { gasEnergy, liquidEnergy } from './stored-energy.js';
import { waterOf } from './test-water.js';

const INSTEAD =
  'no pressure test: raise the line in steps to its working pressure, people away, and look for leaks at each step; thickness, overlap, hardness and bond are checked over the whole repair and signed';

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
  if (test === 'none') return { medium: 'none', pressure, hold, instead: INSTEAD };
  checkSoundPipe(work, found, pressure);
  const { medium } = test;
  const volume = step(recorder, 'acceptance/line-volume', lineVolume, {
    outsideDiameter: found.outsideDiameter,
    wallThickness: repairCase.pipe.wallThickness,
    length: test.length,
  });
  if (pressure === 0) return { medium, pressure, hold, volume };
  if (medium === 'gas') return { medium, pressure, hold, volume, ...gasEnergy(work, test, pressure, volume) };
  const water = waterOf(work, found, pressure, volume);
  return { medium, pressure, hold, volume, ...water, storedEnergy: liquidEnergy(work, found, pressure, volume) };
}

function checkSoundPipe(work: Workbook, { outsideDiameter }: AsFound, pressure: GaugePressure): void {
  const { wallThickness, material } = work.case.pipe;
  const input = { pressure, outsideDiameter, wallThickness };
  const stress = step(work.recorder, 'pipe/hoop-stress', hoopStress, input, 'sound pipe under test');
  if (stress > material.yieldStrength) warn(work, 'The sound pipe would yield at the test pressure: lower it.');
}
