import type { Time } from '../../quantity/index.js';

/** A time, or why nobody knows it; some that are not known are known to last at least so long. */
export type Duration =
  | { readonly known: true; readonly time: Time }
  | { readonly known: false; readonly because: string; readonly atLeast?: Time | undefined };

/** Materials that cure on the pipe, by their use. */
export type CureUse = 'putty' | 'filler' | 'laminate';

/** Nobody can know it from the case: whoever plans the day states it. */
export const notStated = { known: false, because: 'nobody has stated it' } as const satisfies Duration;

/** What a duration surely takes: what follows is then `not before`. */
export function leastOf(duration: Duration): Time {
  return duration.known ? duration.time : (duration.atLeast ?? (0 as Time));
}
