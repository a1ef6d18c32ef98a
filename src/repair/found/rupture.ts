import { step } from '../../formula/index.js';
import { flowStressMultiple, leakOrRupture } from '../../pipe/index.js';
import type { AsFound } from '../design/design.js';
import { type Workbook, warnCrew } from '../job/workbook.js';

/** Would the whole thinned length tear open if it were cut through? Then it is no leak that waits to be repaired. */
export function checkRupture(
  work: Workbook,
  found: Pick<AsFound, 'outsideDiameter' | 'wallToday' | 'wallAtEndOfLife' | 'lengthAtEndOfLife'>,
): void {
  const { recorder, case: repairCase } = work;
  const { pipe, service } = repairCase;
  const wallThickness = found.wallAtEndOfLife > 0 ? found.wallAtEndOfLife : found.wallToday;
  if (wallThickness === 0) return;
  const { yieldStrength } = pipe.material;
  const outcome = step(recorder, 'pipe/leak-or-rupture', leakOrRupture, {
    outsideDiameter: found.outsideDiameter,
    wallThickness,
    flowStress: step(recorder, 'pipe/flow-stress-multiple', flowStressMultiple, { yieldStrength }),
    defectLength: found.lengthAtEndOfLife,
    pressure: service.designPressure,
  });
  if (outcome === 'leak') return;
  warnCrew(
    work,
    'permit',
    'If the whole thinned length broke through, the pipe would tear open at the design pressure instead of leaking: lower the pressure and keep people away until it is repaired.',
  );
}
