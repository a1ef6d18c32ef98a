import type { Line } from '../../quantity/index.js';
import { exactly, line, roundedDown, roundedUp } from '../../quantity/index.js';
import type { RepairDesign } from '../design/design.js';
import { onClock, readClock } from './clock.js';
import { factsOf, type PlanFacts } from './facts.js';
import type { PlanOptions, PlanStep, WorkPlan } from './plan.js';
import { workPractice } from './practice.js';
import { schedule } from './schedule.js';
import { removal, stepsAfter } from './steps-after.js';
import { stepsBefore } from './steps-before.js';
import { stepsBuild } from './steps-build.js';
import { materialsFor, toolsFor } from './stock.js';

const DAY = 86_400;

/**
 * Puts a design into an order of work: every step with what to do, how much, when, what lets the crew go on, what stops it
 * and who signs. Waits are those at the hour at which a material is really laid.
 *
 * A design that was not made has no steps: the plan then says why nobody starts.
 *
 * @param options start on the clock, real hours of steps, times of steps that the design cannot know
 * @throws CalculationError `invalid-input` for an hour that is none, or a step that the plan does not have
 */
export function planWork(design: RepairDesign, options: PlanOptions = {}): WorkPlan {
  const { case: repairCase, verdict, reasons, missing, cautions } = design;
  const start = options.start ?? repairCase.crew?.start;
  const planned = repairCase.crew?.start;
  const late = start === undefined || planned === undefined ? 0 : laterThan(start, planned);
  const facts = factsOf(design, late);
  const base = {
    title: repairCase.title,
    ...(repairCase.reference === undefined ? {} : { reference: repairCase.reference }),
    verdict,
    reasons,
    missing: missing.map(({ field, why, askWhom }) => `${field}: ${why}; ask ${askWhom}`),
    ...(start === undefined ? {} : { start }),
    removal,
    cautions,
  };
  if (facts === undefined) {
    return { ...base, steps: [], criticalPath: [], withoutTime: [], alerts: [], materials: [], tools: [], removal: [] };
  }
  const drafts = [...stepsBefore(facts), ...stepsBuild(facts), ...stepsAfter(facts)];
  const { alerts, ...placed } = schedule(drafts, start, options);
  return {
    ...base,
    ...placed,
    alerts: [...aboutToday(facts), ...bareTooLong(placed.steps), ...alerts],
    materials: materialsFor(facts),
    tools: toolsFor(facts),
  };
}

function laterThan(start: string, planned: string): number {
  const later = readClock(start, 'start').seconds - readClock(planned, 'crew.start').seconds;
  return later < 0 ? later + DAY : later;
}

/** What a foreman has to know before anything else. */
function aboutToday(facts: PlanFacts): Line[] {
  const { site, rolls, acceptance, case: repairCase } = facts;
  const alerts: Line[] = [];
  if (site.decision === 'stop') {
    alerts.push(line('The site says STOP by the readings and the forecast of the case: see the site gate.'));
  } else if (site.weather === 'wait' && site.earliestStart !== undefined && site.earliestStart > 0) {
    alerts.push(
      line('The weather says WAIT; it first allows a start {0} later.', exactly('later', 'time', site.earliestStart)),
    );
  } else if (site.decision === 'wait') {
    alerts.push(line('The site says WAIT by the readings of the case: see the site gate.'));
  }
  if (rolls.fits === false) alerts.push(line('The wrap DOES NOT FIT its working time: see its step.'));
  if (acceptance.hardness === undefined) {
    alerts.push(line('No qualified hardness is stated: the repair cannot be accepted as the case stands.'));
  }
  if (repairCase.crew === undefined) {
    alerts.push(line('The case states no crew: the time of the wrap is not known.'));
  }
  return alerts;
}

/** Bare steel rusts while the filler cures under it. */
function bareTooLong(steps: readonly PlanStep[]): Line[] {
  const [steel, wrap] = ['surface', 'wrap'].map((wanted) => steps.find(({ id }) => id === wanted));
  if (steel === undefined || wrap === undefined) return [];
  const bare = wrap.startsAt - steel.endsAt;
  if (bare <= workPractice.openTime) return [];
  return [
    line(
      'The wrap starts {0} after the steel was prepared; the trade allows {1} at most. Prepare the bare steel on both sides again just before.',
      roundedUp('bare', 'time', bare),
      roundedDown('open time', 'time', workPractice.openTime),
    ),
  ];
}

/** A time of the job as people write it: on the clock where the start is known. */
export function hourOf({ start }: WorkPlan, time: Parameters<typeof onClock>[1]): string | undefined {
  return start === undefined ? undefined : onClock(start, time);
}
