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
 * or resin on steel that had stood bare for too long. As long as there is one, nobody knows when the line is back.
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
  if (isLaidOnOldSteel(step, steps, began))
    return 'Began on steel that had stood bare for too long: take it off, and prepare the steel again.';
  if (step.sort !== 'hold point' || passed.includes(step.id)) return undefined;
  const waiting = [...waitingFor(step.id, steps)];
  const isPassedOver = waiting.some((id) => began[id] !== undefined || passed.includes(id));
  return isPassedOver
    ? 'Hold point passed over: what waits for it has begun, and nobody has marked it as passed.'
    : undefined;
}

/** Whether resin was laid longer after the last preparation than that stays good, as far as the hours tell. */
function isLaidOnOldSteel(
  { id, startsAt }: TimelineStep,
  steps: readonly TimelineStep[],
  began: Entered['began'],
): boolean {
  const again = steps.find(({ takes }) => 'since' in takes);
  if (again === undefined || !('since' in again.takes) || (id !== 'filler' && id !== 'wrap')) return false;
  const { since, goodFor } = again.takes;
  const wasOnlyLookedAt = again.duration.known && again.duration.time === 0;
  const from =
    id === 'filler' || wasOnlyLookedAt ? preparedBy(since, steps, began) : preparedBy(again.id, steps, began);
  return from !== undefined && startsAt >= from && !reaches(goodFor, elapsedTime({ from, to: startsAt }));
}

/** When steel was prepared at the latest: at the end of that step, or where nobody knows how long it took, before the gate opened. */
function preparedBy(id: StepId, steps: readonly TimelineStep[], began: Entered['began']): Time | undefined {
  const step = steps.find((each) => each.id === id);
  if (step?.duration.known) return step.endsAt;
  const next = steps.find(({ after }) => after.includes(id));
  return next !== undefined && began[next.id] !== undefined ? next.startsAt : undefined;
}

/** Every step that waits for one, directly or through others; steps stand after those that they wait for. */
function waitingFor(id: string, steps: readonly TimelineStep[]): ReadonlySet<string> {
  const found = new Set<string>();
  for (const step of steps) if (step.after.some((before) => before === id || found.has(before))) found.add(step.id);
  return found;
}
