import { seeded } from '../oracles/random.js';
import type { Shifts } from './call.js';
import { type Interval, inside } from './printed.js';

/** Where in the rounding intervals of the inputs the printed result is met. */
export interface Witness {
  readonly shifts: Shifts;
  /** The part of half a unit in the last place by which inputs had to be moved: 0.2 is a fifth of it. */
  readonly part: number;
}

type Value = (shifts: Shifts) => number | undefined;

const RANDOM_STARTS = 64;
const ALL_CORNERS = 10;

/** Pushes one input after the other to the end of its interval that brings the result nearer, until none does. */
function climb(value: Value, start: Shifts, direction: 1 | -1): Shifts {
  let best = [...start];
  let reached = value(best);
  for (let pass = 0; pass < 4; pass++) {
    let moved = false;
    for (let index = 0; index < best.length; index++) {
      for (const shift of [-1, 1]) {
        const trial = best.with(index, shift);
        const found = value(trial);
        if (found !== undefined && (reached === undefined || direction * (found - reached) > 0)) {
          [best, reached, moved] = [trial, found, true];
        }
      }
    }
    if (!moved) break;
  }
  return best;
}

function* corners(count: number): Generator<Shifts> {
  if (count > ALL_CORNERS) return;
  for (let bits = 0; bits < 2 ** count; bits++) {
    yield Array.from({ length: count }, (_, index) => ((bits >> index) & 1 ? 1 : -1));
  }
}

/** The nearest point to the printed inputs, on the way to `corner`, at which the result is inside the printed interval. */
function onTheWay(value: Value, corner: Shifts, printed: Interval, direction: 1 | -1): Witness | undefined {
  const at = (part: number): Shifts => corner.map((shift) => shift * part);
  const edge = direction === 1 ? printed.low : printed.high;
  const beyond = (part: number): boolean => {
    const found = value(at(part));
    return found !== undefined && (inside(found, printed) || direction * (found - edge) >= 0);
  };
  if (!beyond(1)) return undefined;
  let [near, far] = [0, 1];
  for (let step = 0; step < 50; step++) {
    const middle = (near + far) / 2;
    if (beyond(middle)) far = middle;
    else near = middle;
  }
  // A result that jumps over the printed interval never meets it.
  const found = value(at(far));
  return found !== undefined && inside(found, printed) ? { shifts: at(far), part: far } : undefined;
}

/**
 * Moves the inputs within their own rounding intervals until the result meets the printed interval: every input pushed
 * in turn, all corners where they are few, and seeded random points, each followed from the printed inputs outward.
 */
export function reach(value: Value, count: number, printed: Interval, name: string): Witness | undefined {
  if (count === 0) return undefined;
  const centre: Shifts = Array.from({ length: count }, () => 0);
  const here = value(centre);
  const direction = here !== undefined && here > printed.high ? -1 : 1;
  const random = seeded(name);
  const starts: Shifts[] = [climb(value, centre, direction), ...corners(count)];
  for (let start = 0; start < RANDOM_STARTS; start++) starts.push(centre.map(() => 2 * random() - 1));
  let best: Witness | undefined;
  for (const corner of starts) {
    const found = onTheWay(value, corner, printed, direction);
    if (found !== undefined && (best === undefined || found.part < best.part)) best = found;
    if (best !== undefined && corner === starts[0]) return best;
  }
  return best;
}
