import { decide, step } from '../../formula/index.js';
import { designHoleDiameter, holeAtEndOfLife } from '../../laminate/index.js';
import { defectAspectRatio, defectCircleDiameter, defectLengthAtEndOfLife } from '../../pipe/index.js';
import { exactly, type Length, roundedDown } from '../../quantity/index.js';
import type { AsFound } from '../design/design.js';
import { need, use, type Workbook, warn } from '../job/workbook.js';
import type { GrowthRates } from './growth.js';

type Thinned = Pick<AsFound, 'wallAtEndOfLife' | 'lengthAtEndOfLife'>;

/** The hole at the end of life, and the one that the laminate is designed for (ISO 24817, 7.5.7; PCC-2, Eq. 12). */
export function holeAtTheEnd(
  work: Workbook,
  found: Thinned,
  growth: GrowthRates,
): { readonly atEndOfLife: Length; readonly toDesignFor: Length } | undefined {
  const holeDiameter = largestHoleThen(work, found, growth);
  if (holeDiameter === undefined) return undefined;
  const leastDiameter = use(work, 'least hole diameter to design for', work.rules.hole.leastDiameter);
  const hole = { holeDiameter, leastDiameter };
  return {
    atEndOfLife: holeDiameter,
    toDesignFor: step(work.recorder, 'laminate/design-hole-diameter', designHoleDiameter, hole),
  };
}

/** A hole grows at its rim; a wall that is used up counts as gone over the whole defect, unless an inspector says less. */
function largestHoleThen(work: Workbook, found: Thinned, growth: GrowthRates): Length | undefined {
  const grown = holeGrown(work, growth);
  const leastWall = use(work, 'least wall that counts as a wall', work.rules.throughWallBelow);
  if (found.wallAtEndOfLife >= leastWall) {
    return (
      grown ??
      need(
        work,
        'defect.holeDiameter',
        'the repair is designed for a leak: the diameter of the circle that encloses the hole',
        'the inspector at the pipe',
      )
    );
  }
  const expected = work.case.defect.holeAtEndOfLife;
  if (expected === undefined) return larger(wholeDefect(work, found, growth), grown);
  warn(
    work,
    'The wall is used up within the life of the repair, and the hole is taken as the inspector expects it instead of the whole defect: less conservative.',
  );
  return larger(expected, grown);
}

function holeGrown(work: Workbook, growth: GrowthRates): Length | undefined {
  const { defect, repair } = work.case;
  if (defect.holeDiameter === undefined) return undefined;
  return step(work.recorder, 'laminate/hole-at-end-of-life', holeAtEndOfLife, {
    holeDiameter: defect.holeDiameter,
    corrosionRate: growth.length,
    designLife: repair.life,
  });
}

function larger(hole: Length, grown: Length | undefined): Length {
  return Math.max(hole, grown ?? hole) as Length;
}

/** The circle round the whole defect as it will be. */
function wholeDefect(work: Workbook, found: Thinned, growth: GrowthRates): Length {
  const { recorder, case: repairCase } = work;
  const { defect, repair } = repairCase;
  const round = { defectLength: defect.circumferentialWidth, rate: growth.length, life: repair.life };
  const defectWidth = step(
    recorder,
    'pipe/defect-length-at-end-of-life',
    defectLengthAtEndOfLife,
    round,
    'width of the defect at the end of life',
  );
  decide(
    recorder,
    'the whole defect counts as the hole',
    'its wall is used up within the life of the repair; an expected hole can be stated',
  );
  const extents = { defectLength: found.lengthAtEndOfLife, defectWidth };
  checkRoundness(work, extents);
  return step(recorder, 'pipe/defect-circle-diameter', defectCircleDiameter, extents);
}

/** A long narrow loss is a slot, not a hole. */
function checkRoundness(
  work: Workbook,
  extents: { readonly defectLength: Length; readonly defectWidth: Length },
): void {
  const { aspectRatio } = work.rules.hole;
  const limit = use(work, 'length over width that still counts as round', aspectRatio);
  const ratio = step(work.recorder, 'pipe/defect-aspect-ratio', defectAspectRatio, extents);
  if (ratio <= limit) return;
  work.notCovered.push({
    text: 'the used-up wall is too long and narrow to count as a round hole: a slot is not part of this version',
    found: exactly('length over width', 'number', ratio),
    limit: roundedDown('largest ratio', 'number', limit),
    clause: aspectRatio.clause,
  });
}
