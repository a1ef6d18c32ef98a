import { type Recorder, step } from '../../formula/index.js';
import { type ClockTime, sinceStart } from '../../quantity/clock.js';
import type { Time } from '../../quantity/index.js';
import { type EnteredHour, type ScheduledStep, type StepLink, schedule } from '../../site/index.js';
import { type Cures, waitOf } from './cure-law.js';
import type { CureUse, Duration } from './duration.js';

/** The steps of a job; a job without a leak or a filler leaves some out. */
export type StepId =
  | 'permit'
  | 'stock'
  | 'survey'
  | 'surface'
  | 'gate'
  | 'seal'
  | 'putty'
  | 'filler'
  | 'filler-wait'
  | 'wrap'
  | 'cure'
  | 'inspection'
  | 'pressure-test'
  | 'return';

/** A step before it has its place in time. How long it takes is data: a time, a wait, or why it is not known. */
export interface JobStep {
  readonly id: StepId;
  readonly sort: 'work' | 'hold point';
  /** Steps that have to be finished first. */
  readonly after: readonly StepId[];
  readonly takes: Duration | { readonly cure: CureUse };
}

/** A step in its place. */
export interface TimelineStep extends JobStep {
  /** From the start of the job. */
  readonly startsAt: Time;
  readonly endsAt: Time;
  /** What is not known counts nothing, and what follows is then `not before`. */
  readonly duration: Duration;
  /** How much later the step may end without moving the return to service. */
  readonly slack: Time;
  /** On the chain that sets the return to service. */
  readonly critical: boolean;
}

export interface Timeline {
  readonly steps: readonly TimelineStep[];
  /** From the start of the job; not before, as long as a step has no time. */
  readonly earliestReturn: Time;
}

/** A job as it is planned: its steps, and what cures in them. */
export interface Job extends Cures {
  /** In an order in which each stands after those that it waits for. */
  readonly steps: readonly JobStep[];
}

/** What is known of a job better than it was planned, by the id of a step. */
export interface Entered {
  /** Start of the job on the clock, to which the hours below belong. */
  readonly start?: ClockTime | undefined;
  /** When a step really began: it moves what follows. */
  readonly began?: Readonly<Record<string, ClockTime>> | undefined;
  /** A stated time fills a gap or adds to a wait; it never cuts one short. */
  readonly durations?: Readonly<Record<string, Time>> | undefined;
}

/**
 * Puts the steps of a job in time. Every hour of a design, of its plan and of a page with real hours comes from here.
 *
 * Each step begins when all that it waits for has ended, or at its real hour; a material waits by the steel from the hour
 * at which it is laid.
 */
export function timeline(job: Job, entered: Entered = {}, recorder?: Recorder): Timeline {
  const { steps } = job;
  const timed: ScheduledStep[] = [];
  const links: StepLink[] = [];
  const hours: EnteredHour[] = [];
  const durations: Duration[] = [];
  for (const { id, after, takes } of steps) {
    for (const before of after) links.push({ step: id, after: before });
    const began = entered.began?.[id];
    const startOf = (): Time => startOfLast([...timed, { name: id, duration: 0 as Time }], links, hours);
    if (began !== undefined && entered.start !== undefined) {
      hours.push({ step: id, at: sinceStart(began, entered.start, startOf()) });
    }
    const own = 'cure' in takes ? waitOf(job, takes.cure, startOf(), recorder) : takes;
    const duration = notShorter(own, entered.durations?.[id]);
    durations.push(duration);
    timed.push({ name: id, duration: duration.known ? duration.time : (0 as Time) });
  }
  const entries = hours.length === 0 ? undefined : hours;
  const { end, rows } = step(recorder, 'site/schedule', schedule, { steps: timed, links, entered: entries });
  return {
    steps: rows.map((row, index) => placed(steps[index] as JobStep, row, durations[index] as Duration)),
    earliestReturn: end,
  };
}

type Row = Pick<TimelineStep, 'startsAt' | 'endsAt' | 'slack' | 'critical'>;

function placed({ id, sort, after, takes }: JobStep, row: Row, duration: Duration): TimelineStep {
  const { startsAt, endsAt, slack, critical } = row;
  return { id, sort, after, takes, startsAt, endsAt, duration, slack, critical };
}

/** When the last step begins, by all that stand before it. */
function startOfLast(
  steps: readonly ScheduledStep[],
  links: readonly StepLink[],
  entered: readonly EnteredHour[],
): Time {
  return schedule({ steps, links, entered }).rows.at(-1)?.startsAt ?? (0 as Time);
}

function notShorter(own: Duration, stated: Time | undefined): Duration {
  if (stated === undefined) return own;
  return { known: true, time: own.known ? (Math.max(stated, own.time) as Time) : stated };
}

/** A step of a timeline; a job without a seal or a filler has no steps of theirs. */
export function stepAt({ steps }: Timeline, id: StepId): TimelineStep | undefined {
  return steps.find((each) => each.id === id);
}

/** When a step that every job has ends. */
export function endOf(hours: Timeline, id: 'gate' | 'cure'): Time {
  const step = stepAt(hours, id);
  if (step === undefined) throw new Error(`the timeline has no step "${id}": a fault of this library`);
  return step.endsAt;
}
