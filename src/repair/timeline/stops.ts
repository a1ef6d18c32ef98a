import { isEarlierOnClock } from '../../quantity/clock.js';
import type { TimelineStep } from './timeline.js';

/** What the day has brought by now. */
export interface Entered {
  /** Steps that have begun, by their id: the value is their real hour, however it is written. */
  readonly began: Readonly<Record<string, unknown>>;
  /** Ids of hold points that were read and passed. */
  readonly passed: readonly string[];
}

/**
 * Why the work must not go on, by the id of the step: a hold point that was passed over, or a step that began before a wait was
 * over. As long as there is one, nobody knows when the line is back.
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
  if (step.sort !== 'hold point' || passed.includes(step.id)) return undefined;
  const waiting = [...waitingFor(step.id, steps)];
  const isPassedOver = waiting.some((id) => began[id] !== undefined || passed.includes(id));
  return isPassedOver
    ? 'Hold point passed over: what waits for it has begun, and nobody has marked it as passed.'
    : undefined;
}

/** Every step that waits for one, directly or through others; steps stand after those that they wait for. */
function waitingFor(id: string, steps: readonly TimelineStep[]): ReadonlySet<string> {
  const found = new Set<string>();
  for (const step of steps) if (step.after.some((before) => before === id || found.has(before))) found.add(step.id);
  return found;
}
