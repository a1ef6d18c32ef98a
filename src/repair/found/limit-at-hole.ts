import { step } from '../../formula/index.js';
import { flowStressMultiple, throughWallSlotPressure } from '../../pipe/index.js';
import type { AsFound } from '../design/design.js';
import { type Open, open } from '../job/stage.js';
import type { Workbook } from '../job/workbook.js';
import { factorAtWork, noWallLeft, type PressureLimit } from './wall-today.js';

/** A hole: if the whole thinned length were cut through, it must stay a leak. */
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
  const highestPressure = step(recorder, 'pipe/through-wall-slot-pressure', throughWallSlotPressure, {
    outsideDiameter,
    wallThickness,
    flowStress: step(recorder, 'pipe/flow-stress-multiple', flowStressMultiple, { yieldStrength }),
    defectLength: repairCase.defect.axialLength,
    safetyFactor,
  });
  return { highestPressure, limitedBy };
}
