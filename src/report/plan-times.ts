import type { Time } from '../quantity/index.js';
import { type Duration, leastOf, notStated } from '../repair/timeline/duration.js';
import type { TimelineStep } from '../repair/timeline/timeline.js';
import { timeText } from './time-text.js';

/** The hour of a time of the job; a time from the start where nobody stated when that is. */
export type HourText = (time: Time) => string;

/** From when to when a step goes, and how that is known; the head of a plan says of which steps nobody stated a time. */
export function stepTimes(step: TimelineStep & { readonly actual?: string | undefined }, hour: HourText): string {
  const { startsAt, endsAt, duration, actual, slack, critical } = step;
  const from = `${actual === undefined ? 'not before' : 'began'} ${hour(startsAt)}`;
  if (!duration.known)
    return duration.because === notStated.because ? from : `${from}; time not known: ${duration.because}`;
  if (duration.time === 0) return from;
  const spare = critical || slack === 0 ? '' : `; ${timeText(slack, 'down')} to spare`;
  return `${from}, ${timeText(duration.time, 'up')}, to ${hour(endsAt)}${spare}`;
}

/** When the line is back in service, by the clock where that is known; no time while the work is stopped at a step. */
export function returnText(
  earliestReturn: Duration,
  clock: HourText | undefined,
  stoppedAt: readonly string[] = [],
): string {
  if (stoppedAt.length > 0) return `Back in service: no time. Stop and call: ${stoppedAt.join('; ')}.`;
  const back = leastOf(earliestReturn);
  const after = `${timeText(back, 'up')} after the start`;
  const not = earliestReturn.known ? '' : 'not known, not before ';
  return `Back in service: ${not}${clock === undefined ? after : `${clock(back)}, ${after}`}.`;
}
