import { decide, heading, step } from '../../formula/index.js';
import { defectDepthAtEndOfLife, hoopStress, metalLossDepth, throughWallAtEndOfLife } from '../../pipe/index.js';
import type { Length } from '../../quantity/index.js';
import { diameterOf } from '../case/diameter.js';
import type { AsFound } from '../design/design.js';
import { type Open, open } from '../job/stage.js';
import { use, type Workbook } from '../job/workbook.js';
import { checkFreeSpan } from './free-span.js';
import { type GrowthRates, growthOf } from './growth.js';
import { holeAtTheEnd } from './hole.js';
import { warnOfJoined } from './joined-defect.js';
import { lengthThen, wallThen, widthThen } from './loss-then.js';
import { checkNeighboursBear } from './neighbour-strength.js';
import { circleRound, leaksToday } from './opening.js';
import { outsideLoadOf } from './outside-load.js';
import { checkPipeFromOutside } from './pipe-from-outside.js';
import { checkRupture } from './rupture.js';
import { checkMetalBesideSlot, slotAtTheEnd } from './slot.js';
import { stressOfSoundPipe } from './sound-pipe.js';
import { checkSoundPipeAlong } from './sound-pipe-along.js';
import { strengthAtTheEnd } from './strength-at-end.js';
import { checkVentedGas } from './vented-gas.js';
import { leastWallToday } from './wall-today.js';

/** Being filled in: what comes last depends on whether the wall is gone by the end. */
type Draft = { -readonly [K in keyof AsFound]: AsFound[K] };

/** The pipe as it was found and as it will be at the end of the repair's life (ISO 24817, defect types). */
export function assessPipe(work: Workbook): AsFound | Open {
  heading(work.recorder, 'Pipe as found');
  warnOfJoined(work);
  const outsideDiameter = diameterOf(work.case.pipe, work.recorder);
  const hoopStressSound = stressOfSoundPipe(work, outsideDiameter);
  checkSoundPipeAlong(work, outsideDiameter, hoopStressSound);
  const outside = outsideLoadOf(work);

  heading(work.recorder, 'Pipe at the end of the life of the repair');
  const wallToday = leastWallToday(work);
  if (outside !== undefined) checkPipeFromOutside(work, outsideDiameter, wallToday, outside.outsidePressure);
  const growth = growthOf(work, wallToday);
  if (growth === undefined) return open;
  const wall = wallThen(work, wallToday, growth);
  const { axialLength, circumferentialWidth } = work.case.defect;
  const found: Draft = {
    outsideDiameter,
    hoopStressSound,
    wallToday,
    wallAtEndOfLife: wall,
    depthAtEndOfLife: depthThen(work, growth, wallToday),
    lengthAtEndOfLife: lengthThen(work, axialLength, growth),
    widthAtEndOfLife: widthThen(work, circumferentialWidth, growth, outsideDiameter),
    throughWall: becomesThroughWall(work, wall),
  };
  if (outside !== undefined) {
    found.outsidePressure = outside.outsidePressure;
    found.soilPressure = outside.soilPressure;
  }
  checkFreeSpan(work, found);
  checkNeighboursBear(work, found, growth);
  checkVentedGas(work, found);
  if (found.throughWall) {
    checkRupture(work, found);
    if (work.case.defect.kind === 'through-wall slot') {
      const metal = checkMetalBesideSlot(work, found);
      const slot = slotAtTheEnd(work, found, growth);
      if (slot === undefined || metal === open) return found;
      found.slotAtEndOfLife = slot.atEndOfLife;
      found.designSlot = slot.toDesignFor;
      // The hole that the risk is screened by: the circle round the slot.
      found.holeAtEndOfLife = circleRound(work, slot.atEndOfLife, 'slot at the end of life');
      return found;
    }
    const hole = holeAtTheEnd(work, found, growth);
    if (hole === undefined) return found;
    found.holeAtEndOfLife = hole.atEndOfLife;
    found.designHole = hole.toDesignFor;
    return found;
  }
  const thinned = { pressure: work.case.service.designPressure, outsideDiameter, wallThickness: wall };
  found.hoopStressThinned = step(
    work.recorder,
    'pipe/hoop-stress',
    hoopStress,
    thinned,
    'least wall at the end of life',
  );
  const strength = strengthAtTheEnd(work, found, growth);
  if (strength !== undefined) found.strength = strength;
  return found;
}

/** Never deeper than the wall is thick. */
function depthThen(work: Workbook, growth: GrowthRates, remainingWall: Length): Length {
  const { recorder, case: repairCase } = work;
  const { wallThickness } = repairCase.pipe;
  const defectDepth = step(recorder, 'pipe/metal-loss-depth', metalLossDepth, { wallThickness, remainingWall });
  const depth = step(recorder, 'pipe/defect-depth-at-end-of-life', defectDepthAtEndOfLife, {
    defectDepth,
    rate: growth.depth,
    life: repairCase.repair.life,
  });
  return Math.min(depth, wallThickness) as Length;
}

/** A leak, or a wall below the least that counts as a wall (ISO 24817, defect types; PCC-2, 401-3.4). */
function becomesThroughWall(work: Workbook, wall: Length): boolean {
  if (leaksToday(work.case.defect)) {
    decide(work.recorder, 'designed as a through-wall defect', 'the pipe leaks');
    return true;
  }
  const through = step(work.recorder, 'pipe/through-wall-at-end-of-life', throughWallAtEndOfLife, {
    wallAtEndOfLife: wall,
    leastWall: use(work, 'least wall that counts as a wall', work.rules.throughWallBelow),
  });
  decide(
    work.recorder,
    through ? 'designed as a through-wall defect' : 'designed as a part-wall defect',
    through ? 'the wall is used up, or nearly, within the life of the repair' : 'a wall is left at the end of life',
  );
  return through;
}
