import { nonNegative, refuse } from '../../formula/index.js';
import type { Line, Time } from '../../quantity/index.js';
import { exactly, line } from '../../quantity/index.js';
import { readClock, sinceStart } from './clock.js';
import type { PlanOptions, PlanStep } from './plan.js';

/** A step before it has its place in time. */
export interface StepDraft
  extends Omit<PlanStep, 'startsAt' | 'endsAt' | 'duration' | 'actual' | 'critical' | 'slack' | 'practice' | 'uses'> {
  readonly uses?: readonly Line[];
  readonly practice?: readonly Line[];
  /** How long it takes when it starts then, from the start of the job; `undefined` where nobody knows. */
  readonly lasts: (startsAt: Time) => Time | undefined;
}

export interface Schedule {
  readonly steps: readonly PlanStep[];
  readonly criticalPath: readonly string[];
  readonly withoutTime: readonly string[];
  readonly earliestReturn: Time;
  readonly alerts: readonly Line[];
}

interface Placed {
  readonly draft: StepDraft;
  readonly startsAt: Time;
  readonly endsAt: Time;
  readonly duration: Time | undefined;
  readonly actual: string | undefined;
}

/**
 * Puts the steps in time: each begins when all that it waits for has ended, or at the real hour that was entered, which
 * moves what follows. A real hour never shortens a wait: it is marked where the wait was not over.
 *
 * @throws CalculationError `invalid-input` for an hour or a time of a step that is not in the plan, or an hour without a start
 */
export function schedule(drafts: readonly StepDraft[], start: string | undefined, options: PlanOptions): Schedule {
  checkNames(drafts, options);
  const placed = new Map<string, Placed>();
  const alerts: Line[] = [];
  for (const draft of drafts) {
    const before = draft.after.map((id) => placed.get(id)).filter((each) => each !== undefined);
    const ready = Math.max(0, ...before.map(({ endsAt }) => endsAt)) as Time;
    const actual = options.actual?.[draft.id];
    const startsAt = actual === undefined ? ready : realStart(draft, actual, start, ready);
    for (const { draft: earlier, endsAt, startsAt: began } of before) {
      if (startsAt < began) alerts.push(line(`"${draft.title}" was entered before "${earlier.title}" began.`));
      else if (startsAt < endsAt && earlier.sort !== 'work') alerts.push(tooEarly(draft, earlier, endsAt - startsAt));
    }
    const stated = options.durations?.[draft.id];
    if (stated !== undefined) nonNegative(stated, `durations.${draft.id}`, 's');
    const own = draft.lasts(startsAt);
    // A stated time fills a gap or adds to the wait; it never cuts a wait short.
    const duration = stated === undefined ? own : (Math.max(stated, own ?? 0) as Time);
    placed.set(draft.id, { draft, startsAt, endsAt: (startsAt + (duration ?? 0)) as Time, duration, actual });
  }
  return finish([...placed.values()], alerts);
}

function checkNames(drafts: readonly StepDraft[], { actual = {}, durations = {} }: PlanOptions): void {
  const ids = drafts.map(({ id }) => id);
  for (const [option, names] of [
    ['actual', Object.keys(actual)],
    ['durations', Object.keys(durations)],
  ] as const) {
    for (const name of names) {
      if (ids.includes(name)) continue;
      const constraint = `must be a step of this plan: ${ids.join(', ')}`;
      refuse({ code: 'invalid-input', parameter: `${option}.${name}`, value: name, unit: '', constraint });
    }
  }
}

function realStart({ id }: StepDraft, actual: string, start: string | undefined, ready: Time): Time {
  if (start === undefined) {
    refuse({
      code: 'invalid-input',
      parameter: `actual.${id}`,
      value: actual,
      unit: '',
      constraint: 'needs the start of the job on the clock: crew.start of the case, or the start of the plan',
    });
  }
  return sinceStart(readClock(actual, `actual.${id}`), readClock(start, 'start').seconds, ready);
}

function tooEarly(draft: StepDraft, earlier: StepDraft, early: number): Line {
  return line(
    `"${draft.title}" was entered {0} before the end of "${earlier.title}": the hour does not release it, only what is to be seen there does.`,
    exactly('entered early', 'time', early),
  );
}

function finish(placed: readonly Placed[], alerts: readonly Line[]): Schedule {
  const end = Math.max(0, ...placed.map(({ endsAt }) => endsAt));
  const latest = latestEnds(placed, end);
  const criticalPath = longestChain(placed);
  const steps = placed.map(({ draft: { lasts: _, ...draft }, startsAt, endsAt, duration, actual }): PlanStep => {
    return {
      ...draft,
      uses: draft.uses ?? [],
      practice: draft.practice ?? [],
      startsAt,
      endsAt,
      ...(duration === undefined ? {} : { duration }),
      ...(actual === undefined ? {} : { actual }),
      critical: criticalPath.includes(draft.id),
      slack: slackOf((latest.get(draft.id) ?? end) - endsAt),
    };
  });
  const withoutTime = steps.filter(({ duration }) => duration === undefined).map(({ id }) => id);
  return { steps, criticalPath, withoutTime, earliestReturn: end as Time, alerts };
}

/** Sums of seconds in another order differ in their last digit: that is no slack. */
function slackOf(seconds: number): Time {
  return (seconds < 1e-3 ? 0 : seconds) as Time;
}

/** The latest end of each step that moves nothing after it. */
function latestEnds(placed: readonly Placed[], end: number): ReadonlyMap<string, number> {
  const latest = new Map<string, number>();
  for (const { draft } of placed.toReversed()) {
    const next = placed.filter(({ draft: { after } }) => after.includes(draft.id));
    const starts = next.map((each) =>
      each.actual === undefined ? (latest.get(each.draft.id) ?? end) - (each.endsAt - each.startsAt) : each.startsAt,
    );
    latest.set(draft.id, Math.min(end, ...starts));
  }
  return latest;
}

/** From the last step back along what ended last; of steps that ended together, the one that is named first. */
function longestChain(placed: readonly Placed[]): string[] {
  const byId = new Map(placed.map((each) => [each.draft.id, each]));
  const chain: string[] = [];
  let at = placed.at(-1);
  while (at !== undefined) {
    chain.unshift(at.draft.id);
    const before: Placed[] = at.draft.after.flatMap((id) => byId.get(id) ?? []);
    at = before.reduce<Placed | undefined>(
      (last, each) => (last === undefined || each.endsAt > last.endsAt ? each : last),
      undefined,
    );
  }
  return chain;
}
