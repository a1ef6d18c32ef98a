import {
  bondForce,
  laidThickness,
  overlapLeft,
  pressureOfEndForce,
  thicknessAtShortOverlap,
} from '../../laminate/index.js';
import { reaches } from '../../numeric/index.js';
import type { GaugePressure, Length } from '../../quantity/index.js';
import { resistanceOnDayOfTest } from '../acceptance/day-of-test.js';
import type { AsFound, Designed, ExtentDesign, LaminateDesign } from '../design/design.js';
import { assessPipe } from '../found/as-found.js';
import { forceAlong } from '../found/external-force.js';
import { openWorkbook } from '../job/open-workbook.js';
import { ifKnown, stage } from '../job/stage.js';
import { attempt, type Workbook } from '../job/workbook.js';
import { rateLaid } from '../laminate/rate-laid.js';
import { checkLimits } from '../limits/limits.js';
import { allowStrains } from '../limits/strains.js';
import { extentAsLaid, plannedThickness, tooThick } from './as-laid.js';
import { countedAsLaid } from './counted.js';
import type { AsBuiltPoint, AsBuiltRating, AsBuiltRecord } from './record.js';
import { testedAsLaid } from './tested-as-laid.js';
import { unrated } from './unrated.js';

/** What a rating may not go above, and what sets that. */
interface Bound {
  readonly pressure: GaugePressure;
  readonly because: string;
}

/** A laminate as it was made. */
interface Laid {
  readonly thickness: Length;
  readonly overlap: Length;
}

/**
 * The pressure that a laminate holds that is thinner or shorter than designed, by the same equations that made the design,
 * and never above what its pressure test bears out.
 *
 * A short overlap takes from the thickness as the rule set makes a laminate thicker where the overlap does not fit; the
 * bond on it has to carry the end load besides. Layers beyond the design do not buy it back: they ask for more overlap. Only
 * what was measured counts, and nothing is rated while something else is against the repair: what is soft, leaks, is dry or
 * lies on oil comes off.
 */
export function rateAsBuilt(design: Designed, record: AsBuiltRecord, against: readonly AsBuiltPoint[]): AsBuiltRating {
  if (against.length > 0)
    return unrated(
      `no pressure can be stated while these do not meet: ${against.map(({ point }) => point).join(', ')}`,
    );
  if (design.case.fitting !== 'none')
    return unrated('what a thinner or shorter laminate holds on a fitting is not known: lay what is missing');
  const extent = extentAsLaid(design, record);
  const laid = laidBy(design, record, extent);
  if (laid === undefined)
    return unrated('layers, thickness and overlap have to be measured before a pressure is stated');
  const beyond = tooThick(design, record);
  if (beyond !== undefined) return unrated(beyond);
  const work = openWorkbook(design.case, { rules: design.options.rules });
  const { plyThickness: systemPly } = design.case.laminate;
  // The plies of the thickness that counts: what is thicker than a ply of the system is resin.
  const plyThickness = Math.min(record.plyThickness ?? systemPly, systemPly) as Length;
  const refused = tooLittle(design, work, laid, plyThickness);
  if (refused !== undefined) return unrated(refused);
  const requiredOverlap = extent.overlap.value;
  const isShort = laid.overlap < requiredOverlap;
  const counted = thicknessAtShortOverlap({
    thickness: isShort ? (Math.min(laid.thickness, plannedThickness(design)) as Length) : laid.thickness,
    overlap: laid.overlap,
    requiredOverlap,
    exponent: work.rules.components.overlayExponent.value,
  });
  const byThickness = resistanceAt(work, design.laminate, counted, plyThickness);
  if (byThickness === undefined) {
    const [reason = { text: 'the equations do not reach this thickness' }] = [...work.notCovered, ...work.reasons];
    return unrated(reason);
  }
  const bond = attempt(work, 'bond', () => endLoadOfBond(work, design.found, laid.overlap));
  if (bond === undefined) return unrated('the bond on this overlap does not carry the axial force');
  const today = resistanceOnDayOfTest(work, { ...design.laminate, laidThickness: counted, resistance: byThickness });
  const tested = testedAsLaid(work, design, record, Math.min(today, bond) as GaugePressure);
  if (tested.pressure === undefined) return tested;
  const { pressure: resisted, because } = leastOf([
    { pressure: byThickness.value, because: byThickness.governing },
    { pressure: bond, because: 'the bond on the overlap' },
    { pressure: tested.pressure, because: tested.because.text },
  ]);
  const pressure = Math.min(resisted, design.case.service.designPressure) as GaugePressure;
  // The design pressure of the workbook is the surge, where that is higher.
  const surges = reaches(resisted, work.case.service.designPressure) ? '' : '; no surge above it at any time';
  return { pressure, because: { text: `governed by ${because}${surges}` } };
}

/** The first of the least. */
function leastOf(bounds: readonly Bound[]): Bound {
  return bounds.reduce((least, each) => (each.pressure < least.pressure ? each : least));
}

/** What lies on the pipe, on the safe side. */
function laidBy(design: Designed, record: AsBuiltRecord, extent: ExtentDesign): Laid | undefined {
  const { length, leastOverlap } = record;
  const thickness = countedAsLaid(design, record);
  if (thickness === undefined || leastOverlap === undefined) return undefined;
  const { defectLength, taper: taperLength } = extent;
  const byLength =
    length === undefined ? leastOverlap : overlapLeft({ totalLength: length, defectLength, taperLength });
  return { thickness, overlap: Math.min(byLength, leastOverlap) as Length };
}

function tooLittle({ laminate }: Designed, { rules }: Workbook, laid: Laid, plyThickness: Length): string | undefined {
  if (!reaches(laid.thickness, laidThickness({ plies: laminate.leastPlies, plyThickness })))
    return 'the laminate is thinner than the fewest plies that may be laid';
  if (laid.overlap < rules.overlap.leastAvailable.value)
    return 'the overlap is shorter than the least for which anything is known';
  return undefined;
}

function resistanceAt(
  work: Workbook,
  laminate: LaminateDesign,
  thickness: Length,
  plyThickness: Length,
): LaminateDesign['resistance'] | undefined {
  const found = stage(work, 'pipe as found', {}, assessPipe);
  const limits = stage(work, 'limits of the repair', { found }, checkLimits);
  const strains = stage(work, 'allowable strain', { limits }, allowStrains);
  return ifKnown(
    stage(work, 'rating', { found, strains }, (_, parts) =>
      rateLaid(work, parts.found, parts.strains, laminate, thickness, plyThickness),
    ),
  );
}

/** The bond round the pipe, over the overlap, with its factor; a push takes as much of it as a pull. */
function endLoadOfBond(work: Workbook, { outsideDiameter }: AsFound, overlap: Length): GaugePressure | undefined {
  const { lapShearStrength } = work.case.laminate;
  if (lapShearStrength === undefined) return undefined;
  const factor = work.rules.overlap.adhesiveFactor.value;
  const externalForce = forceAlong(work, outsideDiameter, 0 as GaugePressure, 'stated loads on the bond');
  const axialForce = bondForce({ outsideDiameter, overlap, lapShearStrength, factor });
  return pressureOfEndForce({ axialForce, outsideDiameter, externalForce });
}
