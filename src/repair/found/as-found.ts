import { decide, heading, step } from '../../formula/index.js';
import {
  defectDepthAtEndOfLife,
  defectLengthAtEndOfLife,
  hoopStress,
  outsideDiameterFromCircumference,
  throughWallAtEndOfLife,
  wallAtEndOfLife,
} from '../../pipe/index.js';
import type { Length, Stress } from '../../quantity/index.js';
import type { AsFound } from '../design/design.js';
import { type Open, open } from '../job/stage.js';
import { use, type Workbook, warn } from '../job/workbook.js';
import { growthOf } from './growth.js';
import { checkRupture, holeAtTheEnd } from './hole.js';
import { assessStrength } from './strength.js';

/** The pipe as it was found and as it will be at the end of the repair's life. */
export function assessPipe(work: Workbook): AsFound | Open {
  const { recorder, case: repairCase } = work;
  const { pipe, service, defect, repair } = repairCase;
  heading(recorder, 'Pipe as found');
  const outsideDiameter = diameterOf(work);
  const { wallThickness } = pipe;
  const pressure = service.designPressure;
  const hoopStressSound = step(
    recorder,
    'pipe/hoop-stress',
    hoopStress,
    { pressure, outsideDiameter, wallThickness },
    'sound pipe',
  );

  checkSoundPipe(work, hoopStressSound);

  heading(recorder, 'Pipe at the end of the life of the repair');
  const growth = growthOf(work);
  if (growth === undefined) return open;
  const life = repair.life;
  const wallThen =
    defect.remainingWall > 0
      ? step(recorder, 'pipe/wall-at-end-of-life', wallAtEndOfLife, {
          presentWall: defect.remainingWall,
          rate: growth.depth,
          life,
        })
      : (0 as Length);
  const depth = (wallThickness - defect.remainingWall) as Length;
  const depthThen = step(recorder, 'pipe/defect-depth-at-end-of-life', defectDepthAtEndOfLife, {
    defectDepth: depth,
    rate: growth.depth,
    life,
  });
  const lengthThen = step(recorder, 'pipe/defect-length-at-end-of-life', defectLengthAtEndOfLife, {
    defectLength: defect.axialLength,
    rate: growth.length,
    life,
  });
  const throughWall = becomesThroughWall(work, wallThen);
  const base = {
    outsideDiameter,
    hoopStressSound,
    wallAtEndOfLife: wallThen,
    depthAtEndOfLife: Math.min(depthThen, wallThickness) as Length,
    lengthAtEndOfLife: lengthThen,
    throughWall,
  };
  if (throughWall) {
    checkRupture(work, base);
    return { ...base, ...holeAtTheEnd(work, base, growth) };
  }
  const thinned = step(
    recorder,
    'pipe/hoop-stress',
    hoopStress,
    { pressure, outsideDiameter, wallThickness: wallThen },
    'least wall at the end of life',
  );
  const strength = assessStrength(work, base, growth);
  return { ...base, hoopStressThinned: thinned, ...(strength === undefined ? {} : { strength }) };
}

function diameterOf(work: Workbook): Length {
  const { outsideDiameter, circumference } = work.case.pipe;
  if (outsideDiameter !== undefined) return outsideDiameter;
  return step(work.recorder, 'pipe/outside-diameter-from-circumference', outsideDiameterFromCircumference, {
    circumference: circumference as Length,
  });
}

/** The overlaps lie on the sound pipe: it has to carry the pressure by itself. */
function checkSoundPipe(work: Workbook, found: Stress): void {
  const { yieldStrength, allowableStress } = work.case.pipe.material;
  if (found > yieldStrength) {
    work.reasons.push({
      text: 'the sound pipe beside the defect would yield at the design pressure: no repair of the defect mends that',
      found: { name: 'hoop stress of the sound pipe', kind: 'stress', value: found },
      limit: { name: 'yield strength', kind: 'stress', value: yieldStrength },
    });
  } else if (allowableStress !== undefined && found > allowableStress) {
    warn(
      work,
      'The hoop stress of the sound pipe beside the defect is above its allowable stress at the design pressure: check the pressure of the line.',
    );
  }
}

function becomesThroughWall(work: Workbook, wallThen: Length): boolean {
  const { defect } = work.case;
  if (defect.kind === 'through-wall hole') {
    decide(work.recorder, 'designed as a through-wall defect', 'the pipe leaks');
    return true;
  }
  const leastWall = use(work, 'least wall that counts as a wall', work.rules.throughWallBelow);
  const through = step(work.recorder, 'pipe/through-wall-at-end-of-life', throughWallAtEndOfLife, {
    wallAtEndOfLife: wallThen,
    leastWall,
  });
  decide(
    work.recorder,
    through ? 'designed as a through-wall defect' : 'designed as a part-wall defect',
    through ? 'the wall is used up, or nearly, within the life of the repair' : 'a wall is left at the end of life',
  );
  return through;
}
