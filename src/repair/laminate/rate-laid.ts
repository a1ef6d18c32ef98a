import type { Length } from '../../quantity/index.js';
import type { AsFound, LaminateDesign } from '../design/design.js';
import type { Workbook } from '../job/workbook.js';
import type { Strains } from '../limits/strains.js';
import { thicknessForLeak } from './leak.js';
import { prepareThickness } from './loads.js';
import { resistanceOf } from './resistance.js';
import { checkHoleSize } from './validity.js';

/** The pressure that any laid thickness resists, by the method of the design and with its joints; nothing where the equations do not reach it. */
export function rateLaid(
  work: Workbook,
  found: AsFound,
  strains: Strains,
  { method, footprint, joints }: LaminateDesign,
  laid: Length,
  plyThickness: Length,
): LaminateDesign['resistance'] | undefined {
  const job = prepareThickness(work, found, strains);
  if (job === undefined) return undefined;
  const { asTested } = job;
  const leak = found.throughWall
    ? thicknessForLeak(work, found.outsideDiameter, footprint, found.designSlot, strains, asTested)
    : undefined;
  if (found.throughWall && leak === undefined) return undefined;
  checkHoleSize(work, found, laid);
  if (work.notCovered.length > 0) return undefined;
  const resisted = resistanceOf(work, method, job, leak?.resistance, laid, joints, plyThickness);
  return work.reasons.length > 0 ? undefined : resisted;
}
