import { planAcceptance } from './acceptance/acceptance.js';
import { askBeforeSigning } from './asked/ask.js';
import type { RepairCase } from './case/case.js';
import { checkCase, type Unusual } from './case/check-case.js';
import type { AsFound, DesignOptions, RepairDesign } from './design/design.js';
import { assessPipe } from './found/as-found.js';
import { checkCoverage } from './found/coverage.js';
import { judgeLine } from './found/line-at-work.js';
import { conclude } from './job/conclude.js';
import { openWorkbook } from './job/open-workbook.js';
import { warnOfRules } from './job/own-rules.js';
import { checkOptions } from './job/rule-set.js';
import { warnOfSlips } from './job/slips.js';
import { ifKnown, type Open, stage } from './job/stage.js';
import type { Workbook } from './job/workbook.js';
import { planExtent } from './laminate/extent.js';
import { designLaminate } from './laminate/laminate.js';
import { checkLimits } from './limits/limits.js';
import { allowStrains } from './limits/strains.js';
import { planCures } from './mix-and-cure/cure.js';
import { planMixes } from './mix-and-cure/mix.js';
import { planSeal } from './seal/seal.js';
import { judgeSite } from './site/site.js';
import { planTimeline } from './timeline/plan-timeline.js';
import { planRolls } from './wrap/rolls.js';
import { planWrap } from './wrap/wrap.js';

/**
 * Designs the whole repair of a pipe: the pipe as found, whether it may be repaired, thickness, extent, wrap, mix and
 * times, each with the criterion that governs it.
 *
 * Each line below is one part of the job. A part that cannot be worked out stays open, and so does what rests on it; why
 * stands in the workbook. So a design that cannot be made is a result, not a crash: see `verdict`, `reasons`, `missing`.
 *
 * @param repairCase what was measured, what the line carries, what material is at hand, what the weather is
 * @param given      `record: true` keeps every step for the calculation sheet; `strict: true` refuses what looks like a
 *   slip; `rules` is a rule set of the user's own
 * @throws CalculationError `invalid-input` when the case lacks a field, holds one that can never be right or two that
 *   contradict each other, or confirms a number that the rule set does not have; when a rule set of the user's own has not
 *   the shape of one; with `strict` also for a value outside its usual span
 */
export function designRepair(repairCase: RepairCase, given: DesignOptions = {}): RepairDesign {
  return finishRepair(beginRepair(repairCase, given));
}

/** A design up to where the weather comes in. */
export interface BegunRepair {
  readonly work: Workbook;
  readonly options: DesignOptions;
  readonly found: AsFound | Open;
}

/** The door, the questions and the pipe as found. No stage here reads `site` or `crew`: what it finds holds at every hour. */
export function beginRepair(repairCase: RepairCase, given: DesignOptions): BegunRepair {
  const unusual: Unusual[] = [];
  const options = checkOptions(given);
  const work = openWorkbook(checkCase(repairCase, unusual), options);
  warnOfSlips(work, unusual, options);
  warnOfRules(work, options.rules);
  stage(work, 'what is asked before signing', {}, askBeforeSigning);
  const coverage = stage(work, 'what this version covers', {}, checkCoverage);
  const found = stage(work, 'pipe as found', { coverage }, assessPipe);
  return { work, options, found };
}

/** The rest of the job, by the weather of the case. */
export function finishRepair({ work, options, found }: BegunRepair): RepairDesign {
  const seal = stage(work, 'leak seal', { found }, planSeal);
  const line = stage(work, 'line while work goes on', { found, seal: ifKnown(seal) }, judgeLine);
  const limits = stage(work, 'limits of the repair', { found }, checkLimits);
  const strains = stage(work, 'allowable strain', { limits }, allowStrains);
  const laminate = stage(work, 'laminate', { found, seal, strains }, designLaminate);
  const extent = stage(work, 'axial extent', { found, laminate }, planExtent);
  const wrap = stage(work, 'wrap', { found, laminate, extent }, planWrap);
  const cures = stage(work, 'cure', { seal }, planCures);
  const mixes = stage(work, 'mixing', { found, extent, wrap, cures }, planMixes);
  const rolls = stage(work, 'rolls', { laminate, extent, wrap, cures, mixes }, planRolls);
  const acceptance = stage(work, 'acceptance', { found, laminate, extent }, planAcceptance);
  const timeline = stage(work, 'hours of the work', { seal, cures, mixes, rolls, acceptance }, planTimeline);
  const site = stage(work, 'site', { found, timeline: ifKnown(timeline) }, judgeSite);
  return conclude(work, options, {
    found,
    line,
    seal,
    laminate,
    extent,
    wrap,
    cures,
    mixes,
    rolls,
    acceptance,
    timeline,
    site,
  });
}
