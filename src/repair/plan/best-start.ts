import { lengthOf, stretchesFrom } from '../../numeric/stretches.js';
import { fromFirstStart, onClock } from '../../quantity/clock.js';
import { type Time, time } from '../../quantity/index.js';
import { type GateDecision, hoursToTry } from '../../site/index.js';
import type { RepairCase, Site } from '../case/case.js';
import type { DesignOptions, Verdict } from '../design/design.js';
import { type BegunRepair, beginRepair, finishRepair } from '../design-repair.js';
import type { Workbook } from '../job/workbook.js';
import { leastOf } from '../timeline/duration.js';
import { readHour } from './clock.js';

/** An hour of the forecast that was tried as the start of the job. */
export interface StartTried {
  /** From the first hour of the forecast. */
  readonly start: Time;
  /** The hour on the clock, where the crew has a start on it. */
  readonly clock?: string;
  /** What became of the design at that start. */
  readonly verdict: Verdict;
  /** Weather only: the steel is prepared on the day. */
  readonly weather: GateDecision;
  /** Whether each charge is laid within its working time; `true` where no crew is stated. */
  readonly fits: boolean;
  /** From the first hour of the forecast, as far as times are known; absent where a wait runs out of the forecast. */
  readonly notBackBefore?: Time;
}

/** The start that brings the line back first, and all that were tried. */
export interface BestStart {
  /** Absent where no hour of the forecast will do. */
  readonly best?: StartTried;
  /** Every hour that was tried, in order. */
  readonly tried: readonly StartTried[];
}

/**
 * The best hour of the forecast to start: every hour is designed anew, with the gate of the site, the waits and the working
 * times of that hour. The one from which the weather lets work start, everything is laid in time and the line is back first
 * wins; of equal ones the earlier.
 *
 * @param repairCase with a forecast; without one only now can be tried
 * @param options    of each design, such as a rule set of the user's own
 * @throws CalculationError `invalid-input` for a forecast of more than a year
 */
export function bestStart(repairCase: RepairCase, options: DesignOptions = {}): BestStart {
  const length = lengthOf(repairCase.site.forecast ?? []) as Time;
  const hours = hoursToTry(length);
  // What is found before the weather comes in is found once. A start keeps no steps.
  const begun = beginRepair(caseStartingAt(repairCase, 0 as Time), { ...options, record: false });
  const tried = Array.from({ length: hours }, (_, index) => tryStart(begun, time.hour(index)));
  let best: StartTried | undefined;
  for (const each of tried) if (canStart(each) && (best === undefined || endOf(each) < endOf(best))) best = each;
  return best === undefined ? { tried } : { best, tried };
}

function canStart({ verdict, weather, fits, notBackBefore }: StartTried): boolean {
  return verdict === 'designed' && weather === 'go' && fits && notBackBefore !== undefined;
}

function endOf({ notBackBefore }: StartTried): number {
  return notBackBefore ?? Number.POSITIVE_INFINITY;
}

function tryStart(begun: BegunRepair, start: Time): StartTried {
  const { verdict, site, rolls, timeline } = finishRepair({ ...begun, work: workStartingAt(begun.work, start) });
  const clock = begun.work.case.crew?.start;
  return {
    start,
    ...(clock === undefined ? {} : { clock: onClock(readHour(clock, 'crew.start'), start) }),
    verdict,
    weather: site?.weather ?? 'wait',
    fits: rolls?.fits ?? true,
    ...(timeline === undefined ? {} : { notBackBefore: fromFirstStart(start, leastOf(timeline.earliestReturn)) }),
  };
}

/** A workbook of its own for a start, with all that was noted before the weather came in. */
function workStartingAt(work: Workbook, start: Time): Workbook {
  const stated = caseStartingAt(work.stated, start);
  return {
    ...work,
    stated,
    case: { ...work.case, site: stated.site, crew: stated.crew },
    reasons: [...work.reasons],
    notCovered: [...work.notCovered],
    missing: [...work.missing],
    assumed: [...work.assumed],
    warnings: [...work.warnings],
    usedRules: new Map(work.usedRules),
  };
}

/**
 * The case as it would be read at that hour of its forecast: what is past is left out, the hour itself is what the crew
 * reads, and the crew starts then.
 *
 * @param repairCase with a forecast; without one only the start of the crew moves
 * @param start from the first hour of the forecast
 */
export function caseStartingAt(repairCase: RepairCase, start: Time): RepairCase {
  const { crew } = repairCase;
  const site = siteAt(repairCase.site, start);
  if (crew === undefined) return { ...repairCase, site };
  const clock = onClock(readHour(crew.start, 'crew.start'), start).split(' ').at(-1) ?? crew.start;
  return { ...repairCase, site, crew: { ...crew, start: clock } };
}

function siteAt(site: Site, start: Time): Site {
  if (site.forecast === undefined) return site;
  // The history was foreseen from the planned start: at another hour the forecast says how warm it is.
  if (start === 0) return { ...site, history: undefined };
  const forecast = stretchesFrom(site.forecast, start);
  const [now] = forecast;
  if (now === undefined) return site;
  const { pipeTemperature, airTemperature, relativeHumidity } = now;
  return { ...site, history: undefined, pipeTemperature, airTemperature, relativeHumidity, forecast };
}
