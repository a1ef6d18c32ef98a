import { decide, step } from '../../formula/index.js';
import { governingWallLossRate } from '../../pipe/index.js';
import type { CorrosionRate, Length } from '../../quantity/index.js';
import type { Growth } from '../case/case.js';
import { need, type Workbook } from '../job/workbook.js';

/** Growth by its rates. */
export interface GrowthRates {
  readonly depth: CorrosionRate;
  readonly length: CorrosionRate;
}

const NO_GROWTH: GrowthRates = { depth: 0 as CorrosionRate, length: 0 as CorrosionRate };

/** Loss from outside stops under a sealed repair; loss from inside goes on, so its rate cannot be left out. */
export function growthOf(work: Workbook, wallToday: Length): GrowthRates | undefined {
  const { defect, pipe } = work.case;
  if (defect.growth !== 'none')
    return ratesOf(work, defect.growth, pipe.wallThickness, wallToday > 0 ? wallToday : defect.remainingWall);
  if (defect.cause === 'external corrosion' || defect.cause === 'mechanical damage') {
    decide(
      work.recorder,
      'no further growth',
      `${defect.cause} is taken to stop under a sealed repair, as the case states`,
    );
    return NO_GROWTH;
  }
  return need(
    work,
    'defect.growth',
    `${defect.cause === 'unknown' ? 'a cause that is not known may be internal, and internal loss' : defect.cause} goes on under the repair: depth and length at the end of its life depend on the rates (that nothing grows can be stated as a rate of zero, but has to be stated)`,
    'the inspection records: wall measured at two dates',
  );
}

function ratesOf(work: Workbook, growth: Growth, originalWall: Length, presentWall: Length): GrowthRates {
  const { depth, length } = growth;
  if (typeof depth === 'number') return { depth, length };
  const { previousWall, sincePrevious, service } = depth;
  const readings = { originalWall, previousWall, presentWall, service, sincePrevious };
  return { depth: step(work.recorder, 'pipe/governing-wall-loss-rate', governingWallLossRate, readings).rate, length };
}
