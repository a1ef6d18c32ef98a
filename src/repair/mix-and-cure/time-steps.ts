import type { Time } from '../../quantity/index.js';

/** A stretch of time of a history or a forecast. */
interface Stretch {
  readonly duration: Time;
}

/** What is left of a history or a forecast once some time has passed. */
export function afterTime<S extends Stretch>(steps: readonly S[], passed: number): S[] {
  let gone = passed;
  return steps.flatMap((each) => {
    const left = (each.duration - Math.min(gone, each.duration)) as Time;
    gone = Math.max(0, gone - each.duration);
    return left > SHORTEST ? [{ ...each, duration: left }] : [];
  });
}

/** Less than this is what rounding left of a stretch that has passed. */
const SHORTEST = 1e-6;
