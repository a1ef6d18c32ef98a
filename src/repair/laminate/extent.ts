import { heading, step } from '../../formula/index.js';
import { axialExtent, governingOverlap, type OverlapCriterion, taperLength } from '../../laminate/index.js';
import type { Length } from '../../quantity/index.js';
import type { AsFound, Candidate, ExtentDesign, Footprint, LaminateDesign } from '../design/design.js';
import { type Open, open } from '../job/stage.js';
import { use, type Workbook } from '../job/workbook.js';
import { overlapOfBond, overlapOfGeometry, overlapOfHole } from './overlap.js';

interface Parts {
  readonly found: AsFound;
  readonly laminate: LaminateDesign;
}

/**
 * How far along the pipe the laminate reaches: every candidate for the overlap, the taper, the total (ISO 24817, 7.5.8;
 * PCC-2, 401-3.4, axial extent).
 */
export function planExtent(work: Workbook, { found, laminate }: Parts): ExtentDesign | Open {
  heading(work.recorder, 'Axial extent');
  return extentOf(work, found, laminate.laidThickness, laminate.footprint);
}

/** The extent of so thick a laminate. */
export function extentOf(
  work: Workbook,
  found: AsFound,
  laminateThickness: Length,
  footprint: Footprint | undefined,
): ExtentDesign | Open {
  const { recorder, rules, case: repairCase } = work;
  const geometry = overlapOfGeometry(work, found);
  const minimum = use(work, 'least overlap', rules.overlap.minimum);
  const { lapShearStrength } = repairCase.laminate;
  if (lapShearStrength === undefined) return open;
  const adhesive = overlapOfBond(work, laminateThickness, lapShearStrength);
  const hole = overlapOfHole(work, found);
  const candidates: Candidate<Length, OverlapCriterion>[] = [
    { criterion: 'geometry', value: geometry },
    { criterion: 'minimum', value: minimum },
    { criterion: 'adhesive', value: adhesive },
  ];
  if (hole !== undefined) candidates.push({ criterion: 'hole', value: hole });
  const demands = hole === undefined ? { geometry, adhesive, minimum } : { geometry, adhesive, minimum, hole };
  const { overlap, governing } = step(recorder, 'laminate/governing-overlap', governingOverlap, demands);

  const ratio = use(work, 'taper', rules.overlap.taper);
  const taper = step(recorder, 'laminate/taper-length', taperLength, { laminateThickness, ratio });
  const defectLength = Math.max(found.lengthAtEndOfLife, found.designHole ?? 0, footprint?.length ?? 0) as Length;
  const reach = { overlap, defectLength, taperLength: taper };
  const totalLength = step(recorder, 'laminate/axial-extent', axialExtent, reach);
  return { overlap: { candidates, governing, value: overlap }, taper, defectLength, totalLength };
}
