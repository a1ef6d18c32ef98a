import { decide, heading, step } from '../../formula/index.js';
import { laidThickness, type PlyCount, plyCount } from '../../laminate/index.js';
import type { Length } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { jointReach, pliesWithJoints } from '../../wrap/index.js';
import { type LaminateCriterion, roundThePipe } from '../design/criteria.js';
import type { AsFound, Candidate, Footprint, JointDesign } from '../design/design.js';
import { open } from '../job/stage.js';
import type { Workbook } from '../job/workbook.js';
import { extentOf } from './extent.js';
import { overlapOfBond } from './overlap.js';

export interface Joined {
  readonly design: JointDesign;
  /** With the plies that the joints take. */
  readonly laid: PlyCount;
}

/**
 * Sheet that is narrower than the laminate is long lies in bands side by side, and no layer carries along the pipe where one
 * band follows the other. Layers are staggered, and plies added until enough of them go through at every place; nothing to
 * do where one band reaches over the whole.
 */
export function joinBands(
  work: Workbook,
  found: AsFound,
  byCriteria: PlyCount,
  footprint: Footprint | undefined,
  candidates: readonly Candidate<Length, LaminateCriterion>[],
): Joined | undefined {
  const { recorder, case: repairCase } = work;
  const { wrap, laminate } = repairCase;
  const { lapShearStrength, plyThickness } = laminate;
  if (wrap.form === 'tape' || lapShearStrength === undefined) return undefined;
  heading(recorder, 'Joints of the sheet');
  const extent = extentOf(work, found, byCriteria.thickness, footprint);
  if (extent === open) return undefined;
  if (wrap.width >= extent.totalLength) {
    decide(
      recorder,
      'one band over the whole length',
      'the sheet is as wide as the laminate is long: no ply ends in it',
    );
    return undefined;
  }
  const reach = step(recorder, 'wrap/joint-reach', jointReach, {
    transferLength: overlapOfBond(work, plyThickness, lapShearStrength),
    leastReach: practice.leastJointReach.value,
  });
  const along = step(
    recorder,
    'laminate/ply-count',
    plyCount,
    { requiredThickness: neededAlong(candidates), plyThickness, leastPlies: practice.leastThroughPlies.value },
    'that have to go through along the pipe',
  );
  const { plies, carrying, lost, places } = step(recorder, 'wrap/plies-with-joints', pliesWithJoints, {
    leastPlies: byCriteria.plies,
    carryingPlies: along.plies,
    sheetWidth: wrap.width,
    sideLap: practice.sideLap.value,
    reach,
  });
  const thickness = step(recorder, 'laminate/laid-thickness', laidThickness, { plies, plyThickness }, 'with joints');
  return { design: { reach, places, carryingPlies: carrying, lostPlies: lost }, laid: { plies, thickness } };
}

/** What any line asks for that needs plies along the pipe; the leak is one of them, as a plate bends both ways. */
function neededAlong(candidates: readonly Candidate<Length, LaminateCriterion>[]): Length {
  let most = 0 as Length;
  for (const { criterion, value } of candidates) if (!roundThePipe.includes(criterion) && value > most) most = value;
  return most;
}
