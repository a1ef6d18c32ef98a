import { laidThickness } from '../laminate/index.js';
import type { GaugePressure } from '../quantity/index.js';
import type { RepairCase } from './case/case.js';
import { checkCase } from './case/check-case.js';
import type { LaminateCriterion } from './design/criteria.js';
import type { Designed, Governed, LaminateDesign, Reason } from './design/design.js';
import { assessPipe } from './found/as-found.js';
import { openWorkbook } from './job/open-workbook.js';
import { open, stage } from './job/stage.js';
import { footprintUnder } from './laminate/footprint.js';
import { rateLaid } from './laminate/rate-laid.js';
import { checkLimits } from './limits/limits.js';
import { allowStrains } from './limits/strains.js';

/** The pressure that a laid laminate resists in a case, against the pressure that it is asked for; or why nothing is known of it. */
export interface LaidInCase {
  /** Design pressure of the case, or a stated surge above it. */
  readonly pressure: GaugePressure;
  /** Pressure that the plies resist, by each criterion; absent where the equations do not reach it. */
  readonly resistance?: Governed<GaugePressure, LaminateCriterion>;
  /** What speaks against the repair in that case, or is not covered. */
  readonly reasons: readonly Reason[];
}

/**
 * What the plies of a design resist where the case turns out otherwise: thinner wall, larger hole, other moduli. The plies stay
 * as laid; each line is that of the design.
 *
 * @param design     that was made: its plies, its method, its footprint and joints
 * @param repairCase as it turns out
 * @throws CalculationError `invalid-input` when that case can never be right
 */
export function laidInCase({ laminate, seal, options }: Designed, repairCase: RepairCase): LaidInCase {
  const work = openWorkbook(checkCase(repairCase), { rules: options.rules });
  const pressure = work.case.service.designPressure;
  const { plyThickness } = work.case.laminate;
  const found = stage(work, 'pipe as found', {}, assessPipe);
  const limits = stage(work, 'limits of the repair', { found }, checkLimits);
  const strains = stage(work, 'allowable strain', { limits }, allowStrains);
  const laid = laidThickness({ plies: laminate.plies, plyThickness });
  const resistance = stage(work, 'rating', { found, strains }, (_, parts) => {
    // The hole and what lies on it are those of the case, not of the design.
    const footprint = parts.found.throughWall ? footprintUnder(work, parts.found, seal) : undefined;
    return rateLaid(work, parts.found, parts.strains, { ...laminate, footprint } as LaminateDesign, laid, plyThickness);
  });
  const reasons = [...work.notCovered, ...work.reasons];
  return resistance === open ? { pressure, reasons } : { pressure, resistance, reasons };
}
