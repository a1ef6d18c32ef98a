import { step } from '../../formula/index.js';
import { largestHole, thicknessForHoleSize, thinLaminateLimit } from '../../laminate/index.js';
import { reaches } from '../../numeric/index.js';
import { exactly, type Length, roundedDown } from '../../quantity/index.js';
import type { AsFound, Reason } from '../design/design.js';
import { use, type Workbook } from '../job/workbook.js';

/** The equations are those of a thin laminate (thin laminate, D over the ratio of the rule set). */
export function checkThin(work: Workbook, outsideDiameter: Length, laid: Length): void {
  const beyond = beyondThin(work, outsideDiameter, laid);
  if (beyond === undefined) return;
  work.reasons.push({ text: 'the laminate would be too thick for the equations of a thin one', ...beyond });
}

/** By what a thickness is that of no thin laminate; nothing where it is. */
export function beyondThin(work: Workbook, outsideDiameter: Length, laid: Length): Omit<Reason, 'text'> | undefined {
  const { thinLaminateRatio } = work.rules;
  const limit = step(work.recorder, 'laminate/thin-laminate-limit', thinLaminateLimit, {
    outsideDiameter,
    ratio: use(work, 'thin-laminate limit', thinLaminateRatio),
  });
  if (laid < limit) return undefined;
  return {
    found: exactly('laid thickness', 'length', laid),
    limit: roundedDown('thin-laminate limit', 'length', limit),
    clause: thinLaminateRatio.clause,
  };
}

/**
 * The formula of the hole holds for one that is small beside the pipe and the laminate: the thinner of wall and laminate
 * decides (ISO 24817, 7.5.7).
 */
export function checkHoleSize(work: Workbook, found: AsFound, laid: Length): void {
  const { designHole, outsideDiameter } = found;
  if (designHole === undefined) return;
  const { validity } = work.rules.hole;
  const largest = step(work.recorder, 'laminate/largest-hole', largestHole, {
    outsideDiameter,
    thickness: Math.min(work.case.pipe.wallThickness, laid) as Length,
    coefficient: use(work, 'largest hole that counts as small', validity),
  });
  if (reaches(largest, designHole)) return;
  work.notCovered.push({
    text: 'the hole is too large for the formula of a round hole',
    found: exactly('hole diameter', 'length', designHole),
    limit: roundedDown('largest hole', 'length', largest),
    clause: validity.clause,
  });
}

/** Where the laminate is the thinner of the two, more plies bring the hole inside that limit; a thin wall no ply can mend. */
export function thicknessForSize(work: Workbook, { designHole, outsideDiameter }: AsFound): Length | undefined {
  if (designHole === undefined) return undefined;
  const coefficient = use(work, 'largest hole that counts as small', work.rules.hole.validity);
  const hole = { holeDiameter: designHole, outsideDiameter, coefficient };
  const thickness = step(work.recorder, 'laminate/thickness-for-hole-size', thicknessForHoleSize, hole);
  return reaches(work.case.pipe.wallThickness, thickness) ? thickness : undefined;
}
