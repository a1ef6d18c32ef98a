import type { Time } from '../../quantity/index.js';

/** A time, or why nobody knows it; some that are not known are known to last at least so long. */
export type Duration =
  | {
      /** Tells the two apart. */
      readonly known: true;
      /** How long it takes. */
      readonly time: Time;
    }
  | {
      /** Tells the two apart. */
      readonly known: false;
      /** Why nobody knows it. */
      readonly because: string;
      /** What it surely takes; absent where not even that is known. */
      readonly atLeast?: Time | undefined;
    };

/** Materials that cure on the pipe, by their use. */
export type CureUse = 'putty' | 'filler' | 'laminate';

/** Nobody can know it from the case: whoever plans the day states it. */
export const notStated = { known: false, because: 'nobody has stated it' } as const satisfies Duration;

/** What a duration surely takes: what follows is then `not before`. */
export function leastOf(duration: Duration): Time {
  return duration.known ? duration.time : (duration.atLeast ?? (0 as Time));
}
