import { decide, step } from '../../formula/index.js';
import { designHoleDiameter, holeAtEndOfLife } from '../../laminate/index.js';
import { defectLengthAtEndOfLife, flowStressMultiple, leakOrRupture } from '../../pipe/index.js';
import type { Length } from '../../quantity/index.js';
import type { AsFound } from '../design/design.js';
import { need, use, type Workbook, warn } from '../job/workbook.js';
import type { GrowthRates } from './growth.js';

type Thinned = Pick<AsFound, 'outsideDiameter' | 'wallAtEndOfLife' | 'lengthAtEndOfLife'>;

/** Would the whole thinned length tear open if it were cut through? Then it is no leak that waits to be repaired. */
export function checkRupture(work: Workbook, found: Thinned): void {
  const { recorder, case: repairCase } = work;
  const { pipe, service, defect } = repairCase;
  const wallThickness = found.wallAtEndOfLife > 0 ? found.wallAtEndOfLife : defect.remainingWall;
  if (wallThickness === 0) return;
  const flowStress = step(recorder, 'pipe/flow-stress-multiple', flowStressMultiple, {
    yieldStrength: pipe.material.yieldStrength,
  });
  const { outsideDiameter, lengthAtEndOfLife: defectLength } = found;
  const slot = { outsideDiameter, wallThickness, flowStress, defectLength };
  if (step(recorder, 'pipe/leak-or-rupture', leakOrRupture, { ...slot, pressure: service.designPressure }) === 'leak')
    return;
  warn(
    work,
    'If the whole thinned length broke through, the pipe would tear open at the design pressure instead of leaking: lower the pressure and keep people away until it is repaired.',
  );
}

/** The hole at the end of life, and the one to design for. */
export function holeAtTheEnd(
  work: Workbook,
  found: Thinned,
  growth: GrowthRates,
): Pick<AsFound, 'holeAtEndOfLife' | 'designHole'> {
  const hole = largestHoleThen(work, found, growth);
  if (hole === undefined) return {};
  const leastDiameter = use(work, 'least hole diameter to design for', work.rules.hole.leastDiameter);
  const designHole = step(work.recorder, 'laminate/design-hole-diameter', designHoleDiameter, {
    holeDiameter: hole,
    leastDiameter,
  });
  return { holeAtEndOfLife: hole, designHole };
}

/** A hole grows at its rim; a wall that is used up counts as gone over the whole defect, unless an inspector says less. */
function largestHoleThen(work: Workbook, found: Thinned, growth: GrowthRates): Length | undefined {
  const { recorder, rules, case: repairCase } = work;
  const { defect, repair } = repairCase;
  const grown =
    defect.holeDiameter === undefined
      ? (0 as Length)
      : step(recorder, 'laminate/hole-at-end-of-life', holeAtEndOfLife, {
          holeDiameter: defect.holeDiameter,
          corrosionRate: growth.length,
          designLife: repair.life,
        });
  const wallIsUsedUp = found.wallAtEndOfLife < use(work, 'least wall that counts as a wall', rules.throughWallBelow);
  if (!wallIsUsedUp) {
    if (defect.holeDiameter !== undefined) return grown;
    return need(
      work,
      'defect.holeDiameter',
      'the repair is designed for a leak: the diameter of the circle that encloses the hole',
      'the inspector at the pipe',
    );
  }
  const expected = defect.holeAtEndOfLife;
  if (expected !== undefined) {
    warn(
      work,
      'The wall is used up within the life of the repair, and the hole is taken as the inspector expects it instead of the whole defect: less conservative.',
    );
    return Math.max(expected, grown) as Length;
  }
  const width = step(
    recorder,
    'pipe/defect-length-at-end-of-life',
    defectLengthAtEndOfLife,
    { defectLength: defect.circumferentialWidth, rate: growth.length, life: repair.life },
    'width of the defect at the end of life',
  );
  decide(
    recorder,
    'the whole defect counts as the hole',
    'its wall is used up within the life of the repair; an expected hole can be stated',
  );
  checkAspect(work, found.lengthAtEndOfLife, width);
  return Math.max(grown, Math.hypot(found.lengthAtEndOfLife, width)) as Length;
}

/** A long narrow loss is a slot, not a hole. */
function checkAspect(work: Workbook, length: number, width: number): void {
  const { aspectRatio } = work.rules.hole;
  const limit = use(work, 'length over width that still counts as round', aspectRatio);
  const found = Math.max(length, width) / Math.min(length, width);
  if (found <= limit) return;
  work.notCovered.push({
    text: 'the used-up wall is too long and narrow to count as a round hole: a slot is not part of this version',
    found: { name: 'length over width', kind: 'number', value: found },
    limit: { name: 'largest ratio', kind: 'number', value: limit },
    clause: aspectRatio.clause,
  });
}
