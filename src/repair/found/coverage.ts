import type { Defect, Filler, Fitting } from '../case/case.js';
import type { Reason } from '../design/design.js';
import { type Open, open } from '../job/stage.js';
import type { Workbook } from '../job/workbook.js';

/**
 * What the case states and this version does not design for. Nothing that was stated is ignored: each entry ends the
 * design with the verdict `not covered`.
 */
export function checkCoverage(work: Workbook): 'covered' | Open {
  const { case: repairCase, notCovered } = work;
  notCovered.push(
    ...uncoveredDefect(repairCase.defect),
    ...uncoveredFitting(repairCase.fitting),
    ...uncoveredFiller(repairCase.filler),
  );
  return notCovered.length > 0 ? open : 'covered';
}

const WHY_NOT: Readonly<Partial<Record<Defect['kind'], string>>> = {
  'through-wall slot': 'the resistance of a laminate over a slot is not part of this version',
  crack:
    'a crack can grow under the laminate and none of the strength methods holds for cracks; assess it by fracture mechanics or cut it out',
  dent: 'a dent concentrates stress and fatigues; none of the strength methods holds for dents',
  gouge: 'a gouge leaves cold-worked metal that cracks; grind it out and measure again, or cut it out',
  lamination: 'a lamination in the wall can open under pressure; have it assessed before any overwrap',
  bulge: 'a bulge shows that the pipe has already yielded; have it assessed before any overwrap',
  'seam defect': 'the strength methods do not hold for selective corrosion of a seam',
};

function uncoveredDefect(defect: Defect): Reason[] {
  const why = WHY_NOT[defect.kind];
  return why === undefined ? [] : [{ text: `the defect is a ${defect.kind}: ${why}` }];
}

function uncoveredFitting(fitting: Fitting): Reason[] {
  if (fitting === 'none') return [];
  return [{ text: `the repair would lie on a ${fitting}: this version designs for straight pipe only` }];
}

/** Overlap, leak resistance and bond assume laminate on prepared steel. */
function uncoveredFiller(filler: Filler | 'none'): Reason[] {
  if (filler === 'none' || filler.underWholeWrap !== true || filler.qualifiedOverFiller !== undefined) return [];
  return [
    {
      text: 'the filler would lie under the whole wrap, bonded overlap included: overlap and leak resistance assume laminate on prepared steel; end the filler short of the overlap, or state the energy release rate of a system that was qualified over filler',
    },
  ];
}
