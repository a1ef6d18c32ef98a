import { heading, step } from '../../formula/index.js';
import {
  axialExtent,
  governingOverlap,
  laidThickness,
  type OverlapCriterion,
  taperLength,
} from '../../laminate/index.js';
import type { Length } from '../../quantity/index.js';
import { type BendLine, bendLineRadius, layersOfPasses, lengthOnBend } from '../../wrap/index.js';
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
  return extentOf(work, found, thicknessAsWrapped(work, laminate), laminate.footprint);
}

/** Whole passes of tape may lay more layers than the criteria ask for: each pulls on the bond, and has to run out in the taper. */
function thicknessAsWrapped({ recorder, case: repairCase }: Workbook, laminate: LaminateDesign): Length {
  const { wrap } = repairCase;
  const { plies: requiredLayers, laidThickness: asAsked } = laminate;
  if (wrap.form !== 'tape') return asAsked;
  const passes = { requiredLayers, overlap: wrap.overlap };
  const plies = step(recorder, 'wrap/layers-of-passes', layersOfPasses, passes);
  if (plies === requiredLayers) return asAsked;
  const { plyThickness } = repairCase.laminate;
  return step(recorder, 'laminate/laid-thickness', laidThickness, { plies, plyThickness }, 'as the passes lay it');
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
  const defectLength = Math.max(
    found.lengthAtEndOfLife,
    found.designHole ?? found.designSlot?.axialLength ?? 0,
    footprint?.length ?? 0,
  ) as Length;
  const reach = { overlap, defectLength, taperLength: taper };
  const totalLength = step(recorder, 'laminate/axial-extent', axialExtent, reach);
  const extent = { overlap: { candidates, governing, value: overlap }, taper, defectLength, totalLength };
  const outside = alongOutside(work, found, totalLength);
  if (outside === undefined) return extent;
  return {
    overlap: extent.overlap,
    taper,
    defectLength,
    totalLength: outside,
    insideLength: totalLength,
  };
}

/** On a bend the laminate has to be long enough along the inside, and is measured along the outside, where it is longer. */
function alongOutside(work: Workbook, { outsideDiameter }: AsFound, lengthAlong: Length): Length | undefined {
  const { recorder, case: repairCase } = work;
  const { fitting } = repairCase;
  if (fitting === 'none' || fitting.bendRadius === undefined) return undefined;
  const { bendRadius } = fitting;
  const radiusOf = (side: BendLine): Length =>
    step(recorder, 'wrap/bend-line-radius', bendLineRadius, { bendRadius, outsideDiameter, line: side }, side);
  const lines = { lengthAlong, measuredRadius: radiusOf('inside'), lineRadius: radiusOf('outside') };
  return step(recorder, 'wrap/length-on-bend', lengthOnBend, lines, 'laminate along the outside of the bend');
}
