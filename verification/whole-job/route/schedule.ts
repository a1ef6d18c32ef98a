import type { Cure } from './cure.js';
import { steelOverHours } from './cure.js';
import { MIXING_TIME, type Mix } from './mix.js';
import { leaksNow } from './pipe-as-found.js';
import type { Job } from './read-job.js';
import { ruleOf } from './rules.js';

/** Prepared steel is good for so long. */
const OPEN_TIME = 14_400;

/** Steps at whose end nobody signs. */
const WORK = new Set(['stock', 'rough-cleaning', 'filler', 'wrap']);
const WAITS_FOR: Readonly<Record<string, string>> = { putty: 'putty', 'filler-wait': 'filler', cure: 'laminate' };

interface Takes {
  /** Nobody has stated it where it is not there. */
  readonly time?: number;
  /** It surely lasts so long. */
  readonly atLeast?: number;
}

interface Step {
  readonly id: string;
  readonly after: readonly string[];
  readonly takes: (startsAt: number, ends: ReadonlyMap<string, number>) => Takes;
}

export interface TimedStep {
  readonly id: string;
  readonly startsAt: number;
  readonly endsAt: number;
  readonly slack: number;
  readonly duration: { readonly known: boolean; readonly time?: number; readonly atLeast?: number };
  readonly sort: 'hold point' | 'work';
  readonly after: readonly string[];
  /** On the longest way to the return. */
  readonly critical: boolean;
  readonly takes: Readonly<Record<string, number | string | boolean>>;
}

export interface Schedule {
  readonly steps: readonly TimedStep[];
  readonly earliestReturn: { readonly known: boolean; readonly atLeast: number };
}

/** Everything that is done, one after the other (docs/plan.md). */
export function scheduleOf(
  job: Job,
  cures: { readonly putty: Cure | undefined; readonly filler: Cure | undefined; readonly laminate: Cure },
  filler: Mix | undefined,
  wrapTime: number | undefined,
): Schedule {
  const leaks = job.seal !== undefined && leaksNow(job);
  const hours = (steelOverHours(job) ?? []).reduce((sum, { duration }) => sum + duration, 0);
  const waits =
    (cure: Cure): Step['takes'] =>
    (startsAt) => {
      const time = cure.wait(startsAt);
      return time === undefined ? { atLeast: Math.max(0, hours - startsAt) } : { time };
    };
  const nobody: Step['takes'] = () => ({});
  const given =
    (time: number | undefined): Step['takes'] =>
    () =>
      time === undefined ? {} : { time };
  const placing =
    filler === undefined || job.filler === undefined
      ? undefined
      : filler.batches * MIXING_TIME + filler.mass / job.filler.rate;
  const test = job.acceptance?.pressureTest;
  const steps: Step[] = [
    { id: 'permit', after: [], takes: nobody },
    { id: 'stock', after: [], takes: nobody },
    { id: 'survey', after: ['permit'], takes: nobody },
    ...(leaks && cures.putty !== undefined
      ? [
          { id: 'rough-cleaning', after: ['survey'], takes: nobody },
          { id: 'seal', after: ['rough-cleaning', 'stock'], takes: nobody },
          { id: 'putty', after: ['seal'], takes: waits(cures.putty) },
          { id: 'surface', after: ['putty'], takes: nobody },
        ]
      : [{ id: 'surface', after: ['survey'], takes: nobody }]),
    { id: 'gate', after: ['surface', 'stock'], takes: given(0) },
    ...(cures.filler !== undefined
      ? [
          { id: 'filler', after: ['gate'], takes: given(placing) },
          { id: 'filler-wait', after: ['filler'], takes: waits(cures.filler) },
        ]
      : []),
    {
      id: 'surface-again',
      after: [cures.filler === undefined ? 'gate' : 'filler-wait'],
      takes: (startsAt, ends) => (startsAt - (ends.get('surface') ?? 0) > OPEN_TIME ? {} : { time: 0 }),
    },
    {
      id: 'wrap',
      after: [cures.filler === undefined ? 'gate' : 'filler-wait', 'surface-again'],
      takes: given(wrapTime),
    },
    { id: 'cure', after: ['wrap'], takes: waits(cures.laminate) },
    { id: 'inspection', after: ['cure'], takes: nobody },
    {
      id: 'pressure-test',
      after: ['inspection'],
      takes: given(test === undefined ? undefined : test === 'none' ? undefined : ruleOf(job, 'systemTest.hold')),
    },
    { id: 'return', after: ['pressure-test'], takes: nobody },
  ];
  const ends = new Map<string, number>();
  const timed = steps.map(({ id, after, takes }) => {
    const startsAt = Math.max(0, ...after.map((each) => ends.get(each) as number));
    const lasts = takes(startsAt, ends);
    const endsAt = startsAt + (lasts.time ?? lasts.atLeast ?? 0);
    ends.set(id, endsAt);
    return { id, after, startsAt, endsAt, lasts };
  });
  const done = ends.get('return') as number;
  const latest = new Map<string, number>();
  for (const { id } of [...timed].reverse()) {
    const followers = timed.filter(({ after }) => after.includes(id));
    const last = Math.min(
      done,
      ...followers.map((each) => (latest.get(each.id) as number) - (each.endsAt - each.startsAt)),
    );
    latest.set(id, last);
  }
  // The longest way to the return: back over the step that ends last, the first named where two do.
  const critical = new Set<string>();
  for (let id: string | undefined = 'return'; id !== undefined; ) {
    critical.add(id);
    const { after } = timed.find((each) => each.id === id) as (typeof timed)[number];
    id = after.reduce<string | undefined>(
      (last, each) => (last === undefined || (ends.get(each) as number) > (ends.get(last) as number) ? each : last),
      undefined,
    );
  }
  return {
    steps: timed.map(({ id, after, startsAt, endsAt, lasts }) => ({
      id,
      startsAt,
      endsAt,
      slack: (latest.get(id) as number) - endsAt,
      duration: { known: lasts.time !== undefined, ...lasts },
      sort: WORK.has(id) ? 'work' : 'hold point',
      after,
      critical: critical.has(id),
      takes:
        id === 'surface-again'
          ? { since: 'surface', goodFor: OPEN_TIME }
          : WAITS_FOR[id] !== undefined
            ? { cure: WAITS_FOR[id] }
            : lasts.time !== undefined
              ? { known: true, time: lasts.time }
              : { known: false },
    })),
    earliestReturn: { known: false, atLeast: done },
  };
}

export function stepOf(schedule: Schedule, id: string): TimedStep {
  return schedule.steps.find((each) => each.id === id) as TimedStep;
}
