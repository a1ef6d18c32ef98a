import { type ClockTime, onClock, readClock } from '../../quantity/clock.js';
import type { Time } from '../../quantity/index.js';
import type { Cures } from '../../repair/timeline/cure-law.js';
import { stopsOf } from '../../repair/timeline/stops.js';
import { type JobStep, type TimelineStep, timeline } from '../../repair/timeline/timeline.js';
import { returnText, stepTimes } from '../plan-times.js';

/** A plan as its page holds it: the steps of the job, what cures in them, and the steel over its hours. */
export interface PagePlan extends Cures {
  readonly start: string;
  readonly steps: readonly (JobStep & { readonly title: string })[];
  /** Times of steps that were stated when the plan was made. */
  readonly stated?: Readonly<Record<string, Time>> | undefined;
}

/** What somebody entered on the page: real hours of steps, and hold points that were read and passed. */
export interface PageEntries {
  readonly began: Readonly<Record<string, string>>;
  readonly passed: readonly string[];
}

export interface MovedStep {
  readonly id: string;
  readonly text: string;
  /** Why the work must not go on from here. */
  readonly fault?: string;
}

export interface MovedPlan {
  readonly steps: readonly MovedStep[];
  /** When the line is back; no time where a hold point was passed over or a wait cut short. */
  readonly back: string;
  readonly isStopped: boolean;
}

/** The plan with what was entered, by the timeline of the library itself: waits too follow the hour at which a material is laid. */
export function movedPlan(plan: PagePlan, { began, passed }: PageEntries): MovedPlan {
  const start = readClock(plan.start);
  if (start === undefined)
    throw new Error(`the plan starts at "${plan.start}", which is no hour: a fault of this library`);
  const hours: Record<string, ClockTime> = {};
  for (const [id, text] of Object.entries(began)) {
    const hour = readClock(text);
    if (hour !== undefined) hours[id] = hour;
  }
  const moved = timeline(plan, { clock: { start, began: hours }, durations: plan.stated });
  const stopped = stopsOf(moved.steps, { began: hours, passed });
  const clock = (time: Time): string => onClock(start, time);
  const steps = moved.steps.map((step): MovedStep => {
    const actual = hours[step.id] === undefined ? undefined : (began[step.id] ?? '');
    const text = stepTimes({ ...step, actual }, clock);
    const fault = isBeforeForeseen(plan, step) ? BEFORE_FORESEEN : stopped.get(step.id);
    return fault === undefined ? { id: step.id, text } : { id: step.id, text, fault };
  });
  const stops = steps.flatMap(({ id, fault }) => (fault === undefined ? [] : [titleOf(plan, id)]));
  return {
    steps,
    isStopped: stops.length > 0,
    back: returnText(moved.earliestReturn, clock, stops),
  };
}

const BEFORE_FORESEEN =
  'Began before the start of the job, where the foreseen hours begin: write 2 07:00 for an hour of the next day.';

/** Whether a step began at an hour whose steel nobody foresaw. */
function isBeforeForeseen({ history }: PagePlan, { startsAt }: TimelineStep): boolean {
  return startsAt < 0 && history !== undefined && history.length > 0;
}

function titleOf({ steps }: PagePlan, id: string): string {
  return steps.find((step) => step.id === id)?.title ?? id;
}
