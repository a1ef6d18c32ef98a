import { step } from '../../formula/index.js';
import { defectLengthAtEndOfLife, defectWidthAtEndOfLife, wallAtEndOfLife } from '../../pipe/index.js';
import type { Length } from '../../quantity/index.js';
import type { Workbook } from '../job/workbook.js';
import type { GrowthRates } from './growth.js';

/** The wall that a loss leaves at the end of the life; one that is gone today stays gone. */
export function wallThen(work: Workbook, presentWall: Length, { depth: rate }: GrowthRates, purpose?: string): Length {
  if (presentWall === 0) return presentWall;
  const wall = { presentWall, rate, life: work.case.repair.life };
  return step(work.recorder, 'pipe/wall-at-end-of-life', wallAtEndOfLife, wall, purpose);
}

/** How long a loss is at the end of the life. */
export function lengthThen(
  work: Workbook,
  defectLength: Length,
  { length: rate }: GrowthRates,
  purpose?: string,
): Length {
  const along = { defectLength, rate, life: work.case.repair.life };
  return step(work.recorder, 'pipe/defect-length-at-end-of-life', defectLengthAtEndOfLife, along, purpose);
}

/** How wide a loss is at the end of the life, never wider than round the pipe. */
export function widthThen(
  work: Workbook,
  defectWidth: Length,
  { length: rate }: GrowthRates,
  outsideDiameter: Length,
  purpose?: string,
): Length {
  const round = { defectWidth, rate, life: work.case.repair.life, outsideDiameter };
  return step(work.recorder, 'pipe/defect-width-at-end-of-life', defectWidthAtEndOfLife, round, purpose);
}
