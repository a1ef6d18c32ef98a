import { decide, heading, step } from '../formula/index.js';
import { designHoleDiameter, holeAtEndOfLife } from '../laminate/index.js';
import {
  defectDepthAtEndOfLife,
  defectLengthAtEndOfLife,
  flowStressMultiple,
  hoopStress,
  isThroughWallAtEndOfLife,
  leakOrRupture,
  outsideDiameterFromCircumference,
  wallAtEndOfLife,
} from '../pipe/index.js';
import type { CorrosionRate, Length } from '../quantity/index.js';
import type { Growth } from './case.js';
import type { AsFound } from './design.js';
import { assessStrength } from './strength-stage.js';
import { need, use, type Workbook, warn } from './workbook.js';

const NO_GROWTH: Growth = { depth: 0 as CorrosionRate, length: 0 as CorrosionRate };

/** The pipe as it was found and as it will be at the end of the repair's life. */
export function assessPipe(work: Workbook): AsFound {
  const { recorder, case: repairCase } = work;
  const { pipe, service, defect, repair } = repairCase;
  heading(recorder, 'Pipe as found');
  const outsideDiameter = diameterOf(work);
  const { wallThickness } = pipe;
  const pressure = service.designPressure;
  const hoopStressSound = step(recorder, hoopStress, { pressure, outsideDiameter, wallThickness }, 'sound pipe');

  heading(recorder, 'Pipe at the end of the life of the repair');
  const growth = growthOf(work);
  const life = repair.life;
  const wallThen =
    defect.remainingWall > 0
      ? step(recorder, wallAtEndOfLife, { presentWall: defect.remainingWall, rate: growth.depth, life })
      : (0 as Length);
  const depth = (wallThickness - defect.remainingWall) as Length;
  const depthThen = step(recorder, defectDepthAtEndOfLife, { defectDepth: depth, rate: growth.depth, life });
  const lengthThen = step(recorder, defectLengthAtEndOfLife, {
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
    checkRupture(work, outsideDiameter, lengthThen);
    const hole = holeThen(work, growth);
    return hole === undefined ? base : { ...base, ...hole };
  }
  const thinned = step(
    recorder,
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
  return step(work.recorder, outsideDiameterFromCircumference, { circumference: circumference as Length });
}

/** Loss from outside stops under a sealed repair; loss from inside goes on, so its rate cannot be left out. */
function growthOf(work: Workbook): Growth {
  const { defect } = work.case;
  if (defect.growth !== 'none') return defect.growth;
  if (defect.cause === 'external corrosion' || defect.cause === 'mechanical damage') {
    decide(
      work.recorder,
      'no further growth',
      `${defect.cause} is taken to stop under a sealed repair, as the case states`,
    );
    return NO_GROWTH;
  }
  need(
    work,
    'defect.growth',
    `${defect.cause === 'unknown' ? 'a cause that is not known may be internal, and internal loss' : defect.cause} goes on under the repair: depth and length at the end of its life depend on the rates (0 mm/year can be stated, but has to be stated)`,
    'the inspection records: wall measured at two dates',
  );
  return NO_GROWTH;
}

function becomesThroughWall(work: Workbook, wallThen: Length): boolean {
  const { defect } = work.case;
  if (defect.kind === 'through-wall hole') {
    decide(work.recorder, 'designed as a through-wall defect', 'the pipe leaks');
    return true;
  }
  const leastWall = use(work, 'least wall that counts as a wall', work.rules.throughWallBelow);
  const through = step(work.recorder, isThroughWallAtEndOfLife, { wallAtEndOfLife: wallThen, leastWall });
  decide(
    work.recorder,
    through ? 'designed as a through-wall defect' : 'designed as a part-wall defect',
    through ? 'the wall is used up, or nearly, within the life of the repair' : 'a wall is left at the end of life',
  );
  return through;
}

/** Would the whole thinned length tear open if it were cut through? Then it is no leak that waits to be repaired. */
function checkRupture(work: Workbook, outsideDiameter: Length, defectLength: Length): void {
  const { recorder, case: repairCase } = work;
  const { pipe, service } = repairCase;
  const flowStress = step(recorder, flowStressMultiple, { yieldStrength: pipe.material.yieldStrength });
  const { wallThickness } = pipe;
  const slot = { outsideDiameter, wallThickness, flowStress, defectLength };
  if (step(recorder, leakOrRupture, { ...slot, pressure: service.designPressure }) === 'leak') return;
  warn(
    work,
    'If the whole thinned length broke through, the pipe would tear open at the design pressure instead of leaking: lower the pressure and keep people away until it is repaired.',
  );
}

function holeThen(work: Workbook, growth: Growth): Pick<AsFound, 'holeAtEndOfLife' | 'designHole'> | undefined {
  const { recorder, rules, case: repairCase } = work;
  const { holeDiameter } = repairCase.defect;
  if (holeDiameter === undefined) {
    return need(
      work,
      'defect.holeDiameter',
      'the repair is designed for a leak: the diameter of the circle that encloses the hole, now or as expected by the end of life',
      'the inspector at the pipe; no less than what the probe finds, no more than the extent of the thinned metal',
    );
  }
  const hole = step(recorder, holeAtEndOfLife, {
    holeDiameter,
    corrosionRate: growth.length,
    designLife: repairCase.repair.life,
  });
  const leastDiameter = use(work, 'least hole diameter to design for', rules.hole.leastDiameter);
  return {
    holeAtEndOfLife: hole,
    designHole: step(recorder, designHoleDiameter, { holeDiameter: hole, leastDiameter }),
  };
}
