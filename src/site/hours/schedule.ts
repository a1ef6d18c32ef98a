import { formula } from '../../formula/index.js';
import type { Time } from '../../quantity/index.js';
import { linksByStep, type ScheduledStep, type ScheduleInput } from './step-links.js';

/** A step in its place. */
export interface StepTimes {
  /** Name of the step. */
  readonly name: string;
  /** From the start of the work. */
  readonly startsAt: Time;
  /** From the start of the work. */
  readonly endsAt: Time;
  /** How much later it may end without moving the end of the work. */
  readonly slack: Time;
  /** On the chain that sets the end. */
  readonly critical: boolean;
}

export interface Schedule {
  readonly end: Time;
  readonly rows: readonly StepTimes[];
}

/**
 * When each step of the work begins and ends, what each can wait, and the chain that sets the end.
 *
 * $$s_i = \max_{j \to i} e_j, \qquad e_i = s_i + d_i$$
 *
 * @param input.steps   in an order in which each stands after those that it waits for; d_i, how long each takes [s], >= 0
 * @param input.links   which step waits for which
 * @param input.entered hours at which steps really began, from the start of the work [s]: they stand in place of s_i
 * @returns end of the last step, and of each its start, its end, its slack and whether it is critical
 * @throws CalculationError `invalid-input` for steps out of order, or a name that no step bears
 * @remarks Of steps that ended together the chain takes the one that is linked first. A step with an entered hour moves
 *   no more, so what stands before it has slack up to that hour. Slack below a billionth of the end is rounding.
 */
export function schedule(input: ScheduleInput): Schedule {
  const { steps, entered } = input;
  const placed: Placed[] = [];
  for (const [index, waitsFor] of linksByStep(input).entries()) {
    const { name, duration } = steps[index] as ScheduledStep;
    const hour = entered?.find(({ step }) => step === name);
    const after = waitsFor.map((at) => placed[at] as Placed);
    const start = hour === undefined ? lastEnd(after) : hour.at;
    placed.push({ name, after, start, end: start + duration, isFixed: hour !== undefined, latest: Infinity });
  }
  const end = lastEnd(placed);
  setLatest(placed, end);
  const critical = criticalChain(placed.at(-1));
  const rows = placed.map((step) => {
    const free = step.latest - step.end;
    const slack = free > ROUNDING * end ? free : 0;
    return {
      name: step.name,
      startsAt: step.start,
      endsAt: step.end,
      slack,
      critical: critical.has(step),
    } as StepTimes;
  });
  return { end: end as Time, rows };
}

/** Sums of times in another order differ in their last digit: that is no slack. */
const ROUNDING = 1e-9;

interface Placed {
  readonly name: string;
  readonly after: readonly Placed[];
  readonly start: number;
  readonly end: number;
  readonly isFixed: boolean;
  /** Latest end that moves nothing behind it. */
  latest: number;
}

function lastEnd(steps: readonly Placed[]): number {
  let last = 0;
  for (const { end } of steps) last = Math.max(last, end);
  return last;
}

/** From the last step back: each is to end before any that waits for it has to begin. */
function setLatest(placed: readonly Placed[], end: number): void {
  for (const step of placed.toReversed()) {
    step.latest = Math.min(step.latest, end);
    const begins = step.isFixed ? step.start : step.latest - (step.end - step.start);
    for (const each of step.after) each.latest = Math.min(each.latest, begins);
  }
}

/** From a step back along what ended last. */
function criticalChain(from: Placed | undefined): ReadonlySet<Placed> {
  const chain = new Set<Placed>();
  for (let at = from; at !== undefined; ) {
    chain.add(at);
    let last: Placed | undefined;
    for (const each of at.after) if (last === undefined || each.end > last.end) last = each;
    at = last;
  }
  return chain;
}

export const scheduleFormula = /* @__PURE__ */ formula<ScheduleInput, Schedule>({
  id: 'site/schedule',
  title: 'Hours of the work',
  search: ['critical path', 'gantt', 'programme of work'],
  compute: schedule,
  equation: {
    algorithm:
      'In order: a step starts at the latest end of those that it waits for, or at its entered hour, and ends its duration later. Back from the last: its latest end is the least start that moves nothing after it; slack is that less its end. The critical chain goes back from the last step along what ended last.',
  },
  inputs: {
    steps: {
      symbol: 'steps',
      kind: 'list',
      name: 'steps and how long each takes',
      columns: { name: 'choice', duration: 'time' },
    },
    links: {
      symbol: 'links',
      kind: 'list',
      name: 'which step waits for which',
      columns: { step: 'choice', after: 'choice' },
    },
    entered: {
      symbol: 'entered',
      kind: 'list',
      name: 'hours at which steps really began',
      columns: { step: 'choice', at: 'time' },
      optional: true,
    },
  },
  output: {
    end: { symbol: 't_end', kind: 'time', name: 'end of the last step' },
    rows: {
      symbol: 'rows',
      kind: 'list',
      name: 'steps in their place',
      columns: { name: 'choice', startsAt: 'time', endsAt: 'time', slack: 'time', critical: 'flag' },
    },
  },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'every chain of steps added up' } },
  limits: [],
});
