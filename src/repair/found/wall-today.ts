import { decide, step } from '../../formula/index.js';
import { damageSafetyFactor, wallLessReadingError } from '../../pipe/index.js';
import type { GaugePressure, Length } from '../../quantity/index.js';
import type { LineLimit } from '../design/criteria.js';
import type { Workbook } from '../job/workbook.js';
import { neededFactors } from './strength-factors.js';

/** The highest pressure at which people may work on the damaged pipe, and what sets it. */
export interface PressureLimit {
  readonly highestPressure: GaugePressure;
  readonly limitedBy: LineLimit;
}

/** The least wall there is today: the reading, less what it may be off; of the defect, or of a neighbour by the same gauge. */
export function leastWallToday(
  { recorder, case: { defect } }: Workbook,
  wallReading: Length = defect.remainingWall,
  purpose?: string,
): Length {
  const { readingError } = defect;
  if (readingError === 'none') return wallReading;
  const reading = { wallReading, readingError };
  return step(recorder, 'pipe/wall-less-reading-error', wallLessReadingError, reading, purpose);
}

/** Without a stated factor nothing says how much of its strength the pipe may use while somebody stands beside it. */
export function factorAtWork(work: Workbook): number | undefined {
  const factors = neededFactors(
    work,
    'the line is under pressure while people work on its thinned wall, and the pressure that it may carry rests on the design factor of the line or a safety factor',
  );
  if (factors === undefined) return undefined;
  const { designFactor = 1, safetyFactor = 1 } = factors;
  return step(work.recorder, 'pipe/damage-safety-factor', damageSafetyFactor, { designFactor, safetyFactor });
}

/** Nothing may be worked on under pressure where the reading error takes the whole wall. */
export function noWallLeft({ recorder }: Workbook, limitedBy: LineLimit): PressureLimit {
  decide(
    recorder,
    'no pressure allowed while work goes on',
    'no wall is left at the defect once the reading error is taken off',
  );
  return { highestPressure: 0 as GaugePressure, limitedBy };
}
