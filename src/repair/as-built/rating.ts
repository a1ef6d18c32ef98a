import { pressureOfEndForce } from '../../laminate/index.js';
import type { Force, GaugePressure, Length } from '../../quantity/index.js';
import type { AsFound, Designed, ExtentDesign, LaminateDesign } from '../design/design.js';
import { assessPipe } from '../found/as-found.js';
import { open, stage } from '../job/stage.js';
import { attempt, openWorkbook, type Workbook } from '../job/workbook.js';
import { externalForceOf } from '../laminate/loads.js';
import { rateLaid } from '../laminate/rate-laid.js';
import { checkLimits } from '../limits/limits.js';
import { allowStrains } from '../limits/strains.js';
import type { AsBuiltRating } from './record.js';

/** A laminate as it was made. */
export interface Laid {
  readonly thickness: Length;
  readonly overlap: Length;
}

/** The parts of a design that a rating goes back to. */
export interface Rated {
  readonly design: Designed;
  readonly found: AsFound;
  readonly laminate: LaminateDesign;
  readonly extent: ExtentDesign;
}

/**
 * The pressure that a laminate holds that is thinner or shorter than designed, by the same equations that made the design.
 *
 * A short overlap takes from the thickness as the rule set makes a laminate thicker where the overlap does not fit; the
 * bond on it has to carry the end load besides.
 */
export function rateAsBuilt(rated: Rated, laid: Laid): AsBuiltRating {
  const { case: repairCase } = rated.design;
  const work = openWorkbook(repairCase, {});
  const refused = tooLittle(work, laid);
  if (refused !== undefined) return { because: refused };
  const share = Math.min(1, laid.overlap / rated.extent.overlap.value);
  const counted = (laid.thickness * share ** work.rules.components.overlayExponent.value) as Length;
  const byThickness = attempt(work, 'rating', () => resistanceAt(work, rated.laminate, counted));
  if (byThickness === undefined) {
    const [reason] = [...work.notCovered, ...work.reasons];
    return { because: reason?.text ?? 'the equations do not reach this thickness' };
  }
  const byBond = share < 1 ? attempt(work, 'bond', () => endLoadOfBond(work, rated.found, laid.overlap)) : undefined;
  if (share < 1 && byBond === undefined) return { because: 'the bond on this overlap does not carry the axial force' };
  const pressure = Math.min(byThickness.value, byBond ?? byThickness.value, repairCase.service.designPressure);
  const governs =
    byBond !== undefined && byBond < byThickness.value ? 'the bond on the overlap' : byThickness.governing;
  return { pressure: pressure as GaugePressure, because: `governed by ${governs}` };
}

function tooLittle({ rules, case: repairCase }: Workbook, laid: Laid): string | undefined {
  const { laminate } = repairCase;
  const least = Math.max(rules.leastPlies.value, laminate.qualifiedPlies ?? 0) * laminate.plyThickness;
  if (laid.thickness < least * (1 - 1e-9)) return 'the laminate is thinner than the fewest plies that may be laid';
  if (laid.overlap < rules.overlap.leastAvailable.value)
    return 'the overlap is shorter than the least for which anything is known';
  return undefined;
}

function resistanceAt(
  work: Workbook,
  laminate: LaminateDesign,
  thickness: Length,
): LaminateDesign['resistance'] | undefined {
  const found = stage(work, 'pipe as found', {}, assessPipe);
  const limits = stage(work, 'limits of the repair', { found }, checkLimits);
  const strains = stage(work, 'allowable strain', { limits }, allowStrains);
  if (found === open || strains === open) return undefined;
  return rateLaid(work, found, strains, laminate.method, thickness);
}

/** The bond round the pipe, over the overlap, with its factor. */
function endLoadOfBond(work: Workbook, { outsideDiameter }: AsFound, overlap: Length): GaugePressure | undefined {
  const { lapShearStrength } = work.case.laminate;
  if (lapShearStrength === undefined) return undefined;
  const held = (lapShearStrength * Math.PI * outsideDiameter * overlap) / work.rules.overlap.adhesiveFactor.value;
  return pressureOfEndForce({
    axialForce: held as Force,
    outsideDiameter,
    externalForce: Math.abs(externalForceOf(work.case)) as Force,
  });
}
