import { reaches } from '../../numeric/index.js';
import { isEarlierOnClock } from '../../quantity/clock.js';
import type { Time } from '../../quantity/index.js';
import { elapsedTime } from '../../site/index.js';
import type { StepId, TimelineStep } from './timeline.js';

/** What the day has brought by now. */
export interface Entered {
  /** Steps that have begun, by their id: the value is their real hour, however it is written. */
  readonly began: Readonly<Record<string, unknown>>;
  /** Ids of hold points that were read and passed. */
  readonly passed: readonly string[];
}

/**
 * Why the work must not go on, by the id of the step: a hold point that was passed over, a step that began before a wait was over,
 * or resin on steel that had stood bare for too long, or for nobody knows how long. As long as there is one, nobody knows when the line is back.
 */
export function stopsOf(steps: readonly TimelineStep[], entered: Entered): ReadonlyMap<string, string> {
  const stops = new Map<string, string>();
  for (const step of steps) {
    const stop = stopAt(step, steps, entered);
    if (stop !== undefined) stops.set(step.id, stop);
  }
  return stops;
}

function stopAt(step: TimelineStep, steps: readonly TimelineStep[], { began, passed }: Entered): string | undefined {
  // Only a real hour can lie there: what is planned begins when all that it waits for has ended.
  const before = steps.filter(({ id }) => step.after.includes(id));
  if (before.some(({ endsAt }) => isEarlierOnClock(step.startsAt, endsAt)))
    return 'Began before the step in front of it had ended.';
  const onSteel = stopOnBareSteel(step, steps, began);
  if (onSteel !== undefined) return onSteel;
  if (step.sort !== 'hold point' || passed.includes(step.id)) return undefined;
  const waiting = [...waitingFor(step.id, steps)];
  const isPassedOver = waiting.some((id) => began[id] !== undefined || passed.includes(id));
  return isPassedOver
    ? 'Hold point passed over: what waits for it has begun, and nobody has marked it as passed.'
    : undefined;
}

/** Why resin must not stay: it was laid longer after the last preparation than that stays good, or it may have been. */
function stopOnBareSteel(
  { id, startsAt }: TimelineStep,
  steps: readonly TimelineStep[],
  began: Entered['began'],
): string | undefined {
  const again = steps.find(({ takes }) => 'since' in takes);
  if (again === undefined || !('since' in again.takes) || (id !== 'filler' && id !== 'wrap')) return undefined;
  const { since, goodFor } = again.takes;
  const wasOnlyLookedAt = again.duration.known && again.duration.time === 0;
  const last = id === 'filler' || wasOnlyLookedAt ? since : again.id;
  const { from, by } = preparedAt(last, steps, began);
  const isOlder = (ready: Time) => startsAt >= ready && !reaches(goodFor, elapsedTime({ from: ready, to: startsAt }));
  if (by !== undefined && isOlder(by))
    return 'Began on steel that had stood bare for too long: take it off, and prepare the steel again.';
  if (began[id] === undefined || !isOlder(from)) return undefined;
  return last === since
    ? 'Nobody entered when the steel was ready, and it may have stood bare for too long: enter the hour of the gate.'
    : 'Nobody entered when the steel was ready again, and it may have stood bare for too long: enter the hour at which it was prepared again.';
}

/** When steel was ready. */
interface Prepared {
  /** At the earliest: when its preparing began, and what that surely takes. */
  readonly from: Time;
  /** At the latest; absent where no real hour tells. */
  readonly by?: Time | undefined;
}

/** At the end of its step, or where nobody knows how long that took, at the real hour of the gate; else before the first resin. */
function preparedAt(id: StepId, steps: readonly TimelineStep[], began: Entered['began']): Prepared {
  const { duration, endsAt } = steps.find((each) => each.id === id) as TimelineStep;
  if (duration.known) return { from: endsAt, by: endsAt };
  const waiting = waitingFor(id, steps);
  const next = steps.find((each) => waiting.has(each.id) && began[each.id] !== undefined);
  return { from: next?.id === 'gate' ? next.startsAt : endsAt, by: next?.startsAt };
}

/** Every step that waits for one, directly or through others; steps stand after those that they wait for. */
function waitingFor(id: string, steps: readonly TimelineStep[]): ReadonlySet<string> {
  const found = new Set<string>();
  for (const step of steps) if (step.after.some((before) => before === id || found.has(before))) found.add(step.id);
  return found;
}
