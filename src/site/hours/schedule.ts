import { formula } from '../../formula/index.js';
import type { Time } from '../../quantity/index.js';
import { linksByStep, type ScheduleInput } from './step-links.js';

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
  const { steps, entered = [] } = input;
  const before = linksByStep(input);
  const starts: number[] = [];
  const ends: number[] = [];
  const fixed: boolean[] = [];
  let end = 0;
  for (const [index, { name, duration }] of steps.entries()) {
    const hour = entered.find(({ step }) => step === name);
    let start = 0;
    for (const at of before[index] ?? []) start = Math.max(start, ends[at] ?? 0);
    starts.push(hour === undefined ? start : hour.at);
    ends.push((starts[index] ?? 0) + duration);
    fixed.push(hour !== undefined);
    end = Math.max(end, ends[index] ?? 0);
  }
  const latest = latestEnds({ before, starts, ends, fixed, end });
  const critical = criticalChain(before, ends);
  const rows = steps.map(({ name }, index) => {
    const [startsAt, endsAt] = [starts[index] ?? 0, ends[index] ?? 0];
    const free = (latest[index] ?? end) - endsAt;
    const slack = free > ROUNDING * end ? free : 0;
    return { name, startsAt, endsAt, slack, critical: critical.has(index) } as StepTimes;
  });
  return { end: end as Time, rows };
}

/** Sums of times in another order differ in their last digit: that is no slack. */
const ROUNDING = 1e-9;

interface Placed {
  readonly before: readonly (readonly number[])[];
  readonly starts: readonly number[];
  readonly ends: readonly number[];
  readonly fixed: readonly boolean[];
  readonly end: number;
}

/** The latest end of each step that moves nothing after it. */
function latestEnds({ before, starts, ends, fixed, end }: Placed): readonly number[] {
  const latest = ends.map(() => end);
  for (let index = ends.length - 1; index >= 0; index--) {
    const [start = 0, own = 0] = [starts[index], ends[index]];
    const begins = fixed[index] === true ? start : (latest[index] ?? end) - (own - start);
    for (const at of before[index] ?? []) latest[at] = Math.min(latest[at] ?? end, begins);
  }
  return latest;
}

/** From the last step back along what ended last. */
function criticalChain(before: readonly (readonly number[])[], ends: readonly number[]): ReadonlySet<number> {
  const chain = new Set<number>();
  let at: number | undefined = ends.length - 1;
  while (at !== undefined) {
    chain.add(at);
    let last: number | undefined;
    for (const each of before[at] ?? []) {
      if (last === undefined || (ends[each] ?? 0) > (ends[last] ?? 0)) last = each;
    }
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
