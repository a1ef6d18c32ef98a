import { type Recorder, step } from '../../formula/index.js';
import { type ClockTime, sinceStart } from '../../quantity/clock.js';
import type { Time } from '../../quantity/index.js';
import { type EnteredHour, elapsedTime, type ScheduledStep, type StepLink, schedule } from '../../site/index.js';
import { type Cures, waitOf } from './cure-law.js';
import { type CureUse, type Duration, leastOf, notStated } from './duration.js';

/** The steps of a job; a job without a leak or a filler leaves some out. */
export type StepId =
  | 'permit'
  | 'stock'
  | 'survey'
  | 'rough-cleaning'
  | 'seal'
  | 'putty'
  | 'surface'
  | 'gate'
  | 'filler'
  | 'filler-wait'
  | 'surface-again'
  | 'wrap'
  | 'cure'
  | 'inspection'
  | 'pressure-test'
  | 'return';

/** A step before it has its place in time. How long it takes is data: a time, a wait, or why it is not known. */
export interface JobStep {
  /** Which step it is. */
  readonly id: StepId;
  /** Whether it is work, or somebody has to sign before the work goes on. */
  readonly sort: 'work' | 'hold point';
  /** Steps that have to be finished first. */
  readonly after: readonly StepId[];
  /** Its time or why it is not known, the cure whose wait it is, or what it has to do again. */
  readonly takes:
    | Duration
    | {
        /** The material whose wait it is, by the hour at which it is laid. */
        readonly cure: CureUse;
      }
    | Renewal;
}

/** What an earlier step leaves is good for so long; after that it is done again, and nobody knows how long that takes. */
export interface Renewal {
  /** The step that left it. */
  readonly since: StepId;
  /** How long it stays good from the end of that step on. */
  readonly goodFor: Time;
}

/** A step in its place. */
export interface TimelineStep extends JobStep {
  /** From the start of the job. */
  readonly startsAt: Time;
  /** From the start of the job; a time that is not known counts with the least that it takes. */
  readonly endsAt: Time;
  /** What is not known counts as long as it surely takes, and what follows is then `not before`. */
  readonly duration: Duration;
  /** How much later the step may end without moving the return to service. */
  readonly slack: Time;
  /** On the chain that sets the return to service. */
  readonly critical: boolean;
}

/** Every step of a job in its place, and when the line may be back. */
export interface Timeline {
  /** Every step of the job, in order. */
  readonly steps: readonly TimelineStep[];
  /** From the start of the job; not known as long as the time of a step is not. */
  readonly earliestReturn: Duration;
}

/** A job as it is planned: its steps, and what cures in them. */
export interface Job extends Cures {
  /** In an order in which each stands after those that it waits for. */
  readonly steps: readonly JobStep[];
}

/** What is known of a job better than it was planned, by the id of a step. */
export interface Entered {
  /** Hours on the clock. */
  readonly clock?:
    | {
        /** Start of the job, to which the hours belong. */
        readonly start: ClockTime;
        /** When a step really began: it moves what follows. */
        readonly began: Readonly<Record<string, ClockTime>>;
      }
    | undefined;
  /** A stated time fills a gap or adds to a wait; it never cuts one short. */
  readonly durations?: Readonly<Record<string, Time>> | undefined;
}

/**
 * Puts the steps of a job in time. Every hour of a design, of its plan and of a page with real hours comes from here.
 *
 * Each step begins when all that it waits for has ended, or at its real hour; a material waits by the steel from the hour
 * at which it is laid.
 *
 * @param job its steps in order, and what cures in them
 * @param entered what is known better than it was planned
 * @param recorder takes the steps of the arithmetic
 */
export function timeline(job: Job, entered: Entered = {}, recorder?: Recorder): Timeline {
  const { steps } = job;
  const { clock, durations: stated } = entered;
  const timed: ScheduledStep[] = [];
  const links: StepLink[] = [];
  const hours: EnteredHour[] = [];
  const durations: Duration[] = [];
  for (const { id, after, takes } of steps) {
    for (const before of after) links.push({ step: id, after: before });
    const rowsUntil = (): readonly Row[] => rowsOf([...timed, { name: id, duration: 0 as Time }], links, hours);
    if (clock?.began[id] !== undefined)
      hours.push({ step: id, at: sinceStart(clock.began[id], clock.start, startOfLast(rowsUntil())) });
    const duration = withStated(takes, durationOf(job, takes, rowsUntil, recorder), stated?.[id]);
    durations.push(duration);
    timed.push({ name: id, duration: leastOf(duration) });
  }
  const entries = hours.length === 0 ? undefined : hours;
  const { end, rows } = step(recorder, 'site/schedule', schedule, { steps: timed, links, entered: entries });
  return {
    steps: rows.map((row, index) => placed(steps[index] as JobStep, row, durations[index] as Duration)),
    earliestReturn: returnAt(end, steps, durations),
  };
}

type Row = Pick<TimelineStep, 'startsAt' | 'endsAt' | 'slack' | 'critical'> & { readonly name: string };

function placed({ id, sort, after, takes }: JobStep, row: Row, duration: Duration): TimelineStep {
  const { startsAt, endsAt, slack, critical } = row;
  return { id, sort, after, takes, startsAt, endsAt, duration, slack, critical };
}

function rowsOf(steps: readonly ScheduledStep[], links: readonly StepLink[], entered: readonly EnteredHour[]) {
  return schedule({ steps, links, entered }).rows;
}

/** When the last step begins, by all that stand before it. */
function startOfLast(rows: readonly Row[]): Time {
  return (rows.at(-1) as Row).startsAt;
}

/** How long the last step takes; where that hangs on the hour at which it begins, by the rows so far. */
function durationOf(cures: Cures, takes: JobStep['takes'], rows: () => readonly Row[], recorder?: Recorder): Duration {
  if ('cure' in takes) return waitOf(cures, takes.cure, startOfLast(rows()), recorder);
  return 'since' in takes ? renewalAt(takes, rows(), recorder) : takes;
}

/** Nothing while what the earlier step left is still good. */
function renewalAt({ since, goodFor }: Renewal, rows: readonly Row[], recorder?: Recorder): Duration {
  const nothing: Duration = { known: true, time: 0 as Time };
  const { endsAt: from } = rows.find(({ name }) => name === since) as Row;
  const to = startOfLast(rows);
  // By the hours that were entered it began before what it renews was there: that stops the work.
  if (to < from) return nothing;
  return step(recorder, 'site/elapsed-time', elapsedTime, { from, to }, since) > goodFor ? notStated : nothing;
}

/** A stated time fills a gap or adds to a wait; it tells nobody how long a wait is that runs past the forecast. */
function withStated(takes: JobStep['takes'], own: Duration, stated: Time | undefined): Duration {
  if (stated === undefined) return own;
  const least = Math.max(stated, leastOf(own)) as Time;
  if (own.known || !('cure' in takes)) return { known: true, time: least };
  return { known: false, because: own.because, atLeast: least };
}

/** Known when every step is; else for each reason the steps that it holds of. */
function returnAt(end: Time, steps: readonly JobStep[], durations: readonly Duration[]): Duration {
  const open = new Map<string, string[]>();
  for (const [index, { id }] of steps.entries()) {
    const duration = durations[index] as Duration;
    if (duration.known) continue;
    const ids = open.get(duration.because) ?? [];
    ids.push(id);
    open.set(duration.because, ids);
  }
  if (open.size === 0) return { known: true, time: end };
  const because = [...open].map(([reason, ids]) => `${ids.join(', ')}: ${reason}`).join('; ');
  return { known: false, because, atLeast: end };
}

/**
 * A step of a timeline; a job without a seal or a filler has no steps of theirs.
 *
 * @param hours of the job
 * @param id of the step
 */
export function stepAt({ steps }: Timeline, id: StepId): TimelineStep | undefined {
  return steps.find((each) => each.id === id);
}

/** When a step that every job has ends. */
export function endOf(hours: Timeline, id: 'surface' | 'gate' | 'cure'): Time {
  const step = stepAt(hours, id);
  if (step === undefined) throw new Error(`the timeline has no step "${id}": a fault of this library`);
  return step.endsAt;
}
