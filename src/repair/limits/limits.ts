import { heading } from '../../formula/index.js';
import type { Temperature } from '../../quantity/index.js';
import type { AsFound } from '../design/design.js';
import { type Open, open } from '../job/stage.js';
import type { Workbook } from '../job/workbook.js';
import { checkBond } from './bond.js';
import { checkClass, checkLife } from './class.js';
import { checkContents } from './contents.js';
import { checkLowestTemperature } from './lowest-temperature.js';
import { screenRisk } from './risk.js';
import { checkTemperature } from './temperature.js';
import { checkTransition } from './transition.js';

/** What the laminate must stay below. */
export interface Limits {
  readonly upperTemperature: Temperature;
}

/** May the pipe be repaired this way at all: class, life, bond, risk, temperature. */
export function checkLimits(work: Workbook, { found }: { found: AsFound }): Limits | Open {
  heading(work.recorder, 'May it be repaired');
  checkClass(work);
  checkLife(work);
  checkBond(work);
  screenRisk(work, found);
  checkContents(work, found);
  checkLowestTemperature(work);
  checkTransition(work);
  const upperTemperature = checkTemperature(work, found.throughWall);
  return upperTemperature === undefined ? open : { upperTemperature };
}
