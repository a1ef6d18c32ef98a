import type { Length, Time } from '../quantity/index.js';
import { tapeArea } from '../wrap/index.js';
import { planAcceptance } from './acceptance/acceptance.js';
import type { RepairCase } from './case/case.js';
import { checkCase } from './case/checks.js';
import { cautionsFor } from './cautions.js';
import type {
  AsFound,
  CureDesign,
  DesignOptions,
  ExtentDesign,
  LaminateDesign,
  MixDesign,
  RepairDesign,
  SheetDesign,
  TapeDesign,
  Verdict,
} from './design/design.js';
import type { AcceptanceDesign, RollsDesign, SealDesign, SiteDesign } from './design/design-work.js';
import { assessPipe } from './found/as-found.js';
import { notCovered } from './found/coverage.js';
import { attempt, openWorkbook, type Workbook } from './job/workbook.js';
import { checkRoom, planExtent } from './laminate/extent.js';
import { designLaminate } from './laminate/laminate.js';
import { checkLimits } from './limits/limits.js';
import { allowStrains, type Strains } from './limits/strains.js';
import { planCure } from './mix-and-cure/cure.js';
import { MIXING_TIME, planFiller, planLaminateResin } from './mix-and-cure/mix.js';
import { planSeal } from './seal/seal.js';
import { judgeSite } from './site/site.js';
import { version } from './version.js';
import { planRolls } from './wrap/rolls.js';
import { planWrap } from './wrap/wrap.js';

/** What the stages have brought so far. */
interface Parts {
  asFound?: AsFound;
  seal?: SealDesign;
  laminate?: LaminateDesign;
  extent?: ExtentDesign;
  wrap?: TapeDesign | SheetDesign;
  mixes: MixDesign[];
  cures: CureDesign[];
  site?: SiteDesign;
  rolls?: RollsDesign;
  acceptance?: AcceptanceDesign;
}

/**
 * Designs the whole repair of a pipe: the pipe as found, whether it may be repaired, thickness, extent, wrap, mix and
 * times, each with the criterion that governs it.
 *
 * A design that cannot be made is a result, not a crash: see `verdict`, `reasons` and `missing`.
 *
 * @param repairCase what was measured, what the line carries, what material is at hand, what the weather is
 * @param options    `record: true` keeps every step for the calculation sheet
 * @throws CalculationError `invalid-input` when numbers of the case contradict each other or can never be right
 */
export function designRepair(repairCase: RepairCase, options: DesignOptions = {}): RepairDesign {
  checkCase(repairCase);
  const work = openWorkbook(repairCase, options);
  for (const { name, kind, value, tag, because } of repairCase.lookedUp ?? []) {
    work.assumed.push({ amount: { name, kind, value }, tag, because });
  }
  work.notCovered.push(...notCovered(repairCase));
  const parts: Parts = { mixes: [], cures: [] };
  if (work.notCovered.length === 0) runStages(work, parts);
  return conclude(work, parts, options);
}

/**
 * In the order of the job. A stage that lacks what it needs has said so in the workbook; what rests on it is left out.
 * A refusal inside a stage is an answer too, and ends that stage only.
 */
function runStages(work: Workbook, parts: Parts): void {
  const found = attempt(work, 'pipe as found', () => assessPipe(work));
  if (found === undefined) return;
  parts.asFound = found;
  const seal = found.throughWall ? attempt(work, 'leak seal', () => planSeal(work, found)) : undefined;
  if (seal !== undefined) parts.seal = seal;
  const upperLimit = attempt(work, 'limits of the repair', () => checkLimits(work, found));
  const strains =
    upperLimit === undefined ? undefined : attempt(work, 'allowable strain', () => allowStrains(work, upperLimit));
  if (strains !== undefined) attempt(work, 'laminate', () => planLaminate(work, parts, found, strains));
  attempt(work, 'filler', () => planFillerAndTimes(work, parts, found));
  attempt(work, 'laminate resin', () => planResinAndTimes(work, parts));
  planWorkOnSite(work, parts, found);
}

/** Mixing and placing of the filler, batch after batch. */
function placingTime(work: Workbook, { mixes }: Parts): number {
  const { filler } = work.case;
  const mix = mixes.find(({ use }) => use === 'filler');
  if (filler === 'none' || mix === undefined) return 0;
  return mix.batches * MIXING_TIME + mix.mass / filler.rate;
}

/** What the crew needs beside the design: rolls, the putty's times, the gate of the site, what has to be shown at the end. */
function planWorkOnSite(work: Workbook, parts: Parts, found: AsFound): void {
  const { laminate, extent, wrap } = parts;
  const { laminate: system, seal } = work.case;
  const times = parts.cures.find(({ material }) => material === system.name);
  const mix = parts.mixes.find(({ use }) => use === 'laminate resin');
  if (laminate !== undefined && extent !== undefined && wrap !== undefined) {
    const rolls = attempt(work, 'rolls', () => planRolls(work, { laminate, extent, wrap, times, mix }));
    if (rolls !== undefined) parts.rolls = rolls;
    const acceptance = attempt(work, 'acceptance', () => planAcceptance(work, found, laminate, extent));
    if (acceptance !== undefined) parts.acceptance = acceptance;
  }
  if (parts.seal !== undefined && seal !== undefined) {
    const putty = attempt(work, 'putty', () => planCure(work, seal.putty.name, seal.putty.cure));
    if (putty !== undefined) parts.cures.push(putty);
  }
  const waits = parts.cures.reduce((sum, { wait }) => sum + wait, 0);
  const cured = waits + placingTime(work, parts) + (parts.rolls?.wrapTime ?? 0);
  parts.site = judgeSite(work, found.throughWall, times === undefined ? undefined : (cured as Time));
}

function planLaminate(work: Workbook, parts: Parts, found: AsFound, strains: Strains): void {
  const laminate = designLaminate(work, found, strains);
  if (laminate === undefined) return;
  parts.laminate = laminate;
  const extent = planExtent(work, found, strains, laminate.laidThickness);
  if (extent === undefined) return;
  parts.extent = extent;
  // A laminate that was refused as too thick is not wrapped: its plan would only mislead.
  if (work.reasons.length > 0) return;
  parts.wrap = planWrap(work, {
    outsideDiameter: laminate.wrappedDiameter,
    plies: laminate.plies,
    fullLength: (extent.totalLength - 2 * extent.taper) as Length,
    totalLength: extent.totalLength,
  });
  checkRoom(work, extent, laidLength(parts, extent));
}

function planFillerAndTimes(work: Workbook, parts: Parts, found: AsFound): void {
  const { filler, defect, pipe } = work.case;
  if (filler === 'none') return;
  const times = planCure(work, filler.name, filler.cure);
  if (times === undefined) return;
  parts.cures.push(times);
  const { extent } = parts;
  if (extent === undefined) return;
  const mix = planFiller(work, filler, {
    outsideDiameter: found.outsideDiameter,
    axialLength: filler.underWholeWrap === true ? laidLength(parts, extent) : extent.defectLength,
    defectLength: extent.defectLength,
    defectWidth: defect.circumferentialWidth,
    defectDepth: (pipe.wallThickness - defect.remainingWall) as Length,
    workingTime: times.workingTime,
  });
  if (mix !== undefined) parts.mixes.push(mix);
}

function laidLength({ wrap }: Parts, { totalLength }: ExtentDesign): Length {
  return wrap?.form === 'tape' ? wrap.overallLength : totalLength;
}

function planResinAndTimes(work: Workbook, parts: Parts): void {
  const { laminate, resin, wrap, filler } = work.case;
  const fillerWait = filler === 'none' ? undefined : parts.cures[0]?.wait;
  const times = planCure(work, laminate.name, laminate.cure, fillerWait);
  if (times === undefined) return;
  parts.cures.push(times);
  const design = parts.wrap;
  if (resin === 'none' || design === undefined) return;
  const fabricArea =
    design.form === 'tape' ? tapeArea({ tapeWidth: wrap.width, tapeLength: design.tapeLength }) : design.sheetArea;
  const mix = planLaminateResin(work, resin, fabricArea, times.workingTime);
  if (mix !== undefined) parts.mixes.push(mix);
}

function verdictOf(work: Workbook): Verdict {
  if (work.notCovered.length > 0) return 'not covered';
  if (work.reasons.length > 0) return 'not repairable';
  return work.missing.length > 0 ? 'needs input' : 'designed';
}

function conclude(work: Workbook, parts: Parts, options: DesignOptions): RepairDesign {
  const { case: repairCase, rules, recorder } = work;
  return {
    verdict: verdictOf(work),
    reasons: [...work.notCovered, ...work.reasons],
    missing: work.missing,
    case: repairCase,
    options,
    libraryVersion: version,
    ruleSet: rules.heading,
    ...parts,
    assumed: work.assumed,
    rules: [...work.usedRules.values()],
    warnings: work.warnings,
    cautions: cautionsFor(repairCase, parts.asFound?.throughWall ?? repairCase.defect.kind === 'through-wall hole'),
    ...(recorder === undefined ? {} : { record: recorder.entries }),
  };
}
