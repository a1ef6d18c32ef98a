import type { Time } from '../../quantity/index.js';
import type { GateDecision } from '../../site/index.js';
import type { RepairCase, Site } from '../case/case.js';
import type { Verdict } from '../design/design.js';
import { designRepair } from '../design-repair.js';
import { afterTime } from '../mix-and-cure/time-steps.js';
import { onClock } from './clock.js';
import { planWork } from './plan-work.js';

const HOUR = 3600;

/** An hour of the forecast that was tried as the start of the job. */
export interface StartTried {
  /** From the first hour of the forecast. */
  readonly start: Time;
  readonly clock?: string;
  readonly verdict: Verdict;
  /** Weather only: the steel is prepared on the day. */
  readonly weather: GateDecision;
  /** Whether each charge is laid within its working time; `true` where no crew is stated. */
  readonly fits: boolean;
  /** From the first hour of the forecast; absent where a wait runs out of the forecast. */
  readonly earliestReturn?: Time;
}

/** The start that brings the line back first, and all that were tried. */
export interface BestStart {
  /** Absent where no hour of the forecast will do. */
  readonly best?: StartTried;
  readonly tried: readonly StartTried[];
}

/**
 * The best hour of the forecast to start: every hour is designed anew, with the gate of the site, the waits and the working
 * times of that hour. The one from which the weather lets work start, everything is laid in time and the line is back first
 * wins; of equal ones the earlier.
 *
 * @param repairCase with a forecast; without one only now can be tried
 */
export function bestStart(repairCase: RepairCase): BestStart {
  const length = (repairCase.site.forecast ?? []).reduce((sum, { duration }) => sum + duration, 0 as number);
  const hours = Math.max(1, Math.ceil(length / HOUR - 1e-9));
  const tried = Array.from({ length: hours }, (_, hour) => tryStart(repairCase, (hour * HOUR) as Time));
  const best = tried.filter(canStart).reduce<StartTried | undefined>((first, each) => {
    return first === undefined || end(each) < end(first) ? each : first;
  }, undefined);
  return best === undefined ? { tried } : { best, tried };
}

function canStart({ verdict, weather, fits, earliestReturn }: StartTried): boolean {
  return verdict === 'designed' && weather === 'go' && fits && earliestReturn !== undefined;
}

function end({ earliestReturn }: StartTried): number {
  return earliestReturn ?? Number.POSITIVE_INFINITY;
}

function tryStart(repairCase: RepairCase, start: Time): StartTried {
  const design = designRepair(caseStartingAt(repairCase, start));
  const plan = planWork(design);
  const clock = repairCase.crew?.start;
  const waits = plan.steps.filter(({ id }) => ['putty', 'filler-wait', 'cure'].includes(id));
  const known = plan.steps.length > 0 && waits.every(({ duration }) => duration !== undefined);
  return {
    start,
    ...(clock === undefined ? {} : { clock: onClock(clock, start) }),
    verdict: design.verdict,
    weather: design.site?.weather ?? 'wait',
    fits: design.rolls?.fits ?? true,
    ...(known && plan.earliestReturn !== undefined ? { earliestReturn: (start + plan.earliestReturn) as Time } : {}),
  };
}

/**
 * The case as it would be read at that hour of its forecast: what is past is left out, the hour itself is what the crew
 * reads, and the crew starts then.
 *
 * @param start from the first hour of the forecast
 */
export function caseStartingAt(repairCase: RepairCase, start: Time): RepairCase {
  const { crew } = repairCase;
  const site = siteAt(repairCase.site, start);
  if (crew === undefined) return { ...repairCase, site };
  const clock = onClock(crew.start, start).split(' ').at(-1) ?? crew.start;
  return { ...repairCase, site, crew: { ...crew, start: clock } };
}

function siteAt(site: Site, start: Time): Site {
  if (site.forecast === undefined) return site;
  // The history was foreseen from the planned start: at another hour the forecast says how warm it is.
  if (start === 0) return { ...site, history: undefined };
  const forecast = afterTime(site.forecast, start);
  const [now] = forecast;
  if (now === undefined) return site;
  const { pipeTemperature, airTemperature, relativeHumidity } = now;
  return { ...site, history: undefined, pipeTemperature, airTemperature, relativeHumidity, forecast };
}
