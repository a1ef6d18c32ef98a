import { heading, step } from '../../formula/index.js';
import {
  axialExtent,
  governingOverlap,
  laidThickness,
  type OverlapCriterion,
  taperLength,
} from '../../laminate/index.js';
import { reaches } from '../../numeric/index.js';
import { outsideRadius } from '../../pipe/index.js';
import type { Length, Ratio } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { type BendLine, bendLineRadius, lengthOnBend, meanThickness, passes, sideLap } from '../../wrap/index.js';
import type { AsFound, Candidate, ExtentDesign, Footprint, LaminateDesign } from '../design/design.js';
import { type Open, open } from '../job/stage.js';
import { use, type Workbook } from '../job/workbook.js';
import { overlapAlongInside } from './inside-of-bend.js';
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
  return extentOf(work, found, thicknessAsLaid(work, laminate), laminate.footprint);
}

/**
 * What lies there on average, with the laps of turns and bands: more than the criteria ask for, and all of it pulls on the bond
 * and has to run out in the taper. On a bend along its inside, where turns close up.
 */
function thicknessAsLaid(
  work: Workbook,
  { wrappedDiameter, plies, laidThickness: asAsked, joints }: LaminateDesign,
): Length {
  const { recorder, case: repairCase } = work;
  const { wrap, laminate } = repairCase;
  if (wrap.form === 'sheet') {
    if (joints === undefined) return asAsked;
    const bands = { thickness: asAsked, width: wrap.width, sideLap: practice.sideLap.value };
    return step(recorder, 'wrap/mean-thickness', meanThickness, bands);
  }
  const { width, overlap } = wrap;
  const once = step(recorder, 'wrap/passes', passes, { requiredLayers: plies, overlap });
  const input = { plies: once, plyThickness: laminate.plyThickness };
  const thickness = step(
    recorder,
    'laminate/laid-thickness',
    laidThickness,
    input,
    'of the passes, without their laps',
  );
  const turns = { overlap: largestOverlap(work, overlap, wrappedDiameter), tapeWidth: width };
  const lap = step(recorder, 'wrap/side-lap', sideLap, turns, 'of neighbouring turns');
  const mean = step(recorder, 'wrap/mean-thickness', meanThickness, { thickness, width, sideLap: lap });
  return reaches(asAsked, mean) ? asAsked : mean;
}

/** A bend that is tighter than the laminate on it is wide is refused with the wrap. */
function largestOverlap(work: Workbook, overlap: Ratio, outsideDiameter: Length): Ratio {
  const { fitting } = work.case;
  if (fitting === 'none' || fitting.bendRadius === undefined) return overlap;
  const { bendRadius } = fitting;
  if (bendRadius <= outsideRadius({ outsideDiameter })) return overlap;
  return overlapAlongInside(work, overlap, { bendRadius, outsideDiameter });
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
  const extent = {
    meanThickness: laminateThickness,
    overlap: { candidates, governing, value: overlap },
    taper,
    defectLength,
    totalLength,
  };
  const outside = alongOutside(work, found, totalLength);
  if (outside === undefined) return extent;
  return { ...extent, totalLength: outside, insideLength: totalLength };
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
