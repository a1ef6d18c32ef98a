/** Cells of the table of bounds; finer cells cost more to fill than they save for 200 points. */
const CELLS = 512;

/** Points of the smallest block, as a power of two: below it looking costs less than bounding. */
const SMALLEST = 3;

/** Sub-lengths that are looked at first lie between so many points, evenly drawn from all. */
const FIRST_LOOK = 400;

/** By how much a bound on a pair of blocks is taken lower: it is worked out from sums that were rounded. */
const BOUND_SLACK = 1e-9;

/** A profile as the search reads it, with the weakest sub-length so far. */
interface Search {
  readonly positions: Float64Array;
  /** Lost area from the first point to each. */
  readonly loss: Float64Array;
  readonly wall: number;
  readonly bulging: (length: number) => number;
  /** For each cell of length an M that no length in it exceeds, and one that no length up to its end exceeds. */
  readonly bounds: Float64Array;
  readonly highest: Float64Array;
  readonly perCell: number;
  /** The steepest growth of the lost area from point to point within each block, by the power of two of its size. */
  readonly steepest: readonly Float64Array[];
  least: number;
  from: number;
  to: number;
}

/**
 * The sub-length, by its first and last point, with the least (1 - a)/(1 - a/M), where a is the share of the wall area that is
 * lost on it and M the bulging factor at its length.
 *
 * Every contiguous sub-length is looked at, but most of them by the block: all that begin in one block of points and end in
 * another hold what lies between the blocks, and add lengths on which no more is lost than at the steepest of their points. So
 * a is at most the larger of its values without and with all of these, and M at most that at the length between the outer ends.
 * The ratio falls with a and with M: what it comes to there is a bound, and where that is not below the least so far, no pair of
 * points in these blocks can win. Else the blocks are halved, down to a few points.
 *
 * There a table holds, for each cell of length, the larger M of its two ends, which no length in the cell exceeds (M never
 * falls, but for a dip of API 579-1 close to 0 that curves upward). With that M the sub-length comes out no higher than with its
 * own; if that is not below the least so far, it cannot win. What is left in the loop are products.
 */
export function weakestSubLength(
  positions: Float64Array,
  loss: Float64Array,
  wall: number,
  bulging: (length: number) => number,
): readonly [from: number, to: number] {
  const n = positions.length;
  const total = (positions[n - 1] as number) - (positions[0] as number);
  const bounds = upperBounds(bulging, total);
  const search: Search = {
    positions,
    loss,
    wall,
    bulging,
    bounds,
    highest: risen(bounds),
    perCell: CELLS / total,
    steepest: steepestOf(positions, loss),
    least: Number.POSITIVE_INFINITY,
    from: 0,
    to: 0,
  };
  // What is nearly the least, before blocks are bounded by it; few points have no use for it.
  const stride = Math.ceil(n / FIRST_LOOK);
  if (stride > 1)
    for (let i = 0; i < n; i += stride) for (let j = i + stride; j < n; j += stride) look(search, i, i, j, j);
  descend(search, search.steepest.length - 1, 0, 0);
  return [search.from, search.to];
}

/** The sub-lengths that begin in one block and end in another of the same size, a power of two. */
function descend(search: Search, power: number, first: number, last: number): void {
  const n = search.positions.length;
  if (first > last || last << power >= n) return;
  const [start, end] = [first << power, last << power];
  const [startEnd, endEnd] = [Math.min(start + (1 << power), n) - 1, Math.min(end + (1 << power), n) - 1];
  if (first < last && !canHoldWeaker(search, power, start, startEnd, end, endEnd)) return;
  if (power <= SMALLEST) look(search, start, startEnd, end, endEnd);
  else {
    for (const begins of [2 * first, 2 * first + 1])
      for (const ends of [2 * last, 2 * last + 1]) descend(search, power - 1, begins, ends);
  }
}

/** Looks at every sub-length that begins at one of the first points and ends at one of the last. */
function look(search: Search, start: number, startEnd: number, end: number, endEnd: number): void {
  const { positions, loss, wall, bulging, bounds, perCell } = search;
  let { least } = search;
  for (let i = start; i <= startEnd; i++) {
    const from = positions[i] as number;
    const lossBefore = loss[i] as number;
    for (let j = Math.max(i + 1, end); j <= endEnd; j++) {
      const length = (positions[j] as number) - from;
      const full = length * wall;
      const lost = (loss[j] as number) - lossBefore;
      const bound = bounds[Math.trunc(length * perCell)] as number;
      if ((full - lost) * bound >= least * (full * bound - lost)) continue;
      const M = bulging(length);
      const share = ((full - lost) * M) / (full * M - lost);
      if (share >= least) continue;
      least = share;
      search.from = i;
      search.to = j;
    }
  }
  search.least = least;
}

/** Whether a sub-length from one block to another may be weaker than the least so far. */
function canHoldWeaker(
  search: Search,
  power: number,
  start: number,
  startEnd: number,
  end: number,
  endEnd: number,
): boolean {
  const { positions, loss, wall, highest, perCell, steepest, least } = search;
  const inner = (positions[end] as number) - (positions[startEnd] as number);
  const outer = (positions[endEnd] as number) - (positions[start] as number);
  const between = (loss[end] as number) - (loss[startEnd] as number);
  const slopes = steepest[power] as Float64Array;
  const slope = Math.max(slopes[start >> power] as number, slopes[end >> power] as number);
  const share = Math.max(between / inner, (between + slope * (outer - inner)) / outer) / wall;
  // Without a loss the ratio is 1, which is never below what has been found.
  if (share <= 0) return false;
  const M = highest[Math.trunc(outer * perCell)] as number;
  return !((1 - share) * M * (1 - BOUND_SLACK) >= least * (M - share));
}

/** For each power of two the steepest step of the lost area within each block of so many points. */
function steepestOf(positions: Float64Array, loss: Float64Array): Float64Array[] {
  const n = positions.length;
  const steps = new Float64Array(n);
  for (let i = n - 2; i >= 0; i--) {
    const width = (positions[i + 1] as number) - (positions[i] as number);
    steps[i] = ((loss[i + 1] as number) - (loss[i] as number)) / width;
  }
  const levels = [steps];
  for (let below = steps; below.length > 1; ) {
    const level = new Float64Array(Math.ceil(below.length / 2));
    for (let i = 0; i < level.length; i++) level[i] = Math.max(below[2 * i] as number, below[2 * i + 1] ?? 0);
    levels.push(level);
    below = level;
  }
  return levels;
}

function upperBounds(bulging: (length: number) => number, total: number): Float64Array {
  // Two cells beyond the end, since the longest length may be rounded into them.
  const bounds = new Float64Array(CELLS + 2);
  let here = bulging(0);
  for (let cell = 0; cell < bounds.length; cell++) {
    const next = bulging(((cell + 1) * total) / CELLS);
    bounds[cell] = Math.max(here, next);
    here = next;
  }
  return bounds;
}

/** The highest bound up to each cell. */
function risen(bounds: Float64Array): Float64Array {
  let highest = 0;
  return bounds.map((bound) => {
    highest = Math.max(highest, bound);
    return highest;
  });
}
