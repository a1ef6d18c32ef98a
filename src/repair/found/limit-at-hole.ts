import { step } from '../../formula/index.js';
import {
  axialLossPressure,
  flowStressMultiple,
  throughWallArcStress,
  throughWallSlotPressure,
} from '../../pipe/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';
import type { AsFound } from '../design/design.js';
import { type Open, open } from '../job/stage.js';
import type { Workbook } from '../job/workbook.js';
import { forceAlong } from './external-force.js';
import { factorAtWork, noWallLeft, type PressureLimit } from './wall-today.js';

/** A hole: if the whole thinned length were cut through, it must stay a leak, and if the whole width were, hold together. */
export function limitAtHole(
  work: Workbook,
  { outsideDiameter, wallToday: wallThickness }: AsFound,
): PressureLimit | Open {
  const { recorder, case: repairCase } = work;
  const safetyFactor = factorAtWork(work);
  if (safetyFactor === undefined) return open;
  const limitedBy = 'metal round the hole';
  if (wallThickness === 0) return noWallLeft(work, limitedBy);
  const { yieldStrength } = repairCase.pipe.material;
  const flowStress = step(recorder, 'pipe/flow-stress-multiple', flowStressMultiple, { yieldStrength });
  const round = step(recorder, 'pipe/through-wall-slot-pressure', throughWallSlotPressure, {
    outsideDiameter,
    wallThickness,
    flowStress,
    defectLength: repairCase.defect.axialLength,
    safetyFactor,
  });
  const along = alongThePipe(work, outsideDiameter, flowStress, safetyFactor);
  if (along < round) return { highestPressure: along, limitedBy: 'metal beside the hole, along the pipe' };
  return { highestPressure: round, limitedBy };
}

/** The end load and the stated force, a push as a pull, go past the hole through the sound wall beside the defect. */
function alongThePipe(
  work: Workbook,
  outsideDiameter: Length,
  flowStress: Stress,
  safetyFactor: number,
): GaugePressure {
  const { recorder, case: repairCase } = work;
  const cut = { outsideDiameter, cutWidth: repairCase.defect.circumferentialWidth, flowStress };
  const failureStress = step(recorder, 'pipe/through-wall-arc-stress', throughWallArcStress, cut);
  // Thinned all round, and nothing beside it.
  if (failureStress === 0) return 0 as GaugePressure;
  return step(recorder, 'pipe/axial-loss-pressure', axialLossPressure, {
    failureStress,
    safetyFactor,
    outsideDiameter,
    wallThickness: repairCase.pipe.wallThickness,
    axialForce: forceAlong(work, outsideDiameter, 0 as GaugePressure, 'stated force past the hole, a push as a pull'),
  });
}
