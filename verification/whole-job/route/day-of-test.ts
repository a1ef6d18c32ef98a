import { testsSuffice } from './energy-from-tests.js';
import { type LaminateFigures, resistanceToday } from './laminate.js';
import { type Unbonded, unbonded } from './leak.js';
import type { Readings } from './open-readings.js';
import { type Found, pipeAsFound } from './pipe-as-found.js';
import type { Job } from './read-job.js';
import { ruleOf } from './rules.js';
import { strengthOf } from './strength-found.js';

/** Pressure that the laid laminate resists on the day of the test, over the pipe as it is that day. */
export function resistanceOnTheDay(
  job: Job,
  found: Found,
  where: Unbonded | undefined,
  laminate: LaminateFigures,
  readings: Readings,
): number {
  const sameDay = { ...job, repair: { ...job.repair, life: 0 } };
  const today = pipeAsFound(sameDay);
  // What a wall that counts as gone may open to at the end of its life says nothing of today.
  const { designHole: open = 0 } = pipeAsFound({ ...sameDay, defect: { ...job.defect, holeAtEndOfLife: undefined } });
  const largest = Math.sqrt(
    ruleOf(job, 'hole.validity') * found.outsideDiameter * Math.min(found.wall, laminate.laidThickness),
  );
  // Too large an opening for the formula of a round hole, or tests that tell no energy: rated as at the end of the life.
  const untold = job.filler?.underWholeWrap !== true && !testsSuffice(job.laminate);
  if (today.throughWall && (open > largest || untold)) return laminate.resistance.value;
  // A slot is tested as it is; what lies over a hole is rated as at the end of its life.
  const openToday = today.throughWall ? (where?.under === 'slot' ? unbonded(job, today) : where) : undefined;
  // The heat and the cold of service come after that day: a held line pushes and pulls by the steel of the work.
  const { pipeTemperature: steel } = job.site;
  const thatDay: Job = { ...job, service: { ...job.service, designTemperature: steel, lowestTemperature: steel } };
  const resists = resistanceToday(thatDay, today, strengthOf(thatDay, today), openToday, laminate, readings);
  // Less than a pascal is what the search leaves of a pressure where the other loads alone are too much.
  return resists < 1 ? 0 : resists;
}
