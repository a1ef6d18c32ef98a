import { normalBelow } from '../numeric/index.js';

/** The point at which a limit state is most likely reached, and how likely that is by its tangent there. */
export interface DesignPoint {
  /** Distance of the limit state from the middle, in standard deviations; below 0 where the middle itself falls short. */
  readonly index: number;
  /** Chance to fall short, by the distance of the point. */
  readonly probability: number;
  /** In standard normal numbers. */
  readonly point: readonly number[];
  /** Share of each input in the distance: squares of the direction cosines, which sum to 1. */
  readonly shares: readonly number[];
}

const MOST_STEPS = 100;
const STEP = 1e-3;
const CLOSE = 1e-5;

/**
 * First-order reliability: the point of the limit state g = 0 nearest to the origin of independent standard normal numbers,
 * by the iteration of Hasofer and Lind with the transformation of Rackwitz and Fiessler, each step shortened until it serves
 * (merit function |u|^2/2 + c |g|). The index is the distance, the probability Phi(-index).
 *
 * @param g limit state, below 0 where it falls short; `undefined` where nobody can tell
 * @returns a sentence where no such point is found
 */
export function firstOrder(g: (u: readonly number[]) => number | undefined, inputs: number): DesignPoint | string {
  let u: number[] = Array.from({ length: inputs }, () => 0);
  const atMiddle = g(u);
  if (atMiddle === undefined) return 'the resistance at the middle of the distributions is not known';
  const scale = Math.abs(atMiddle) || 1;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const value = g(u);
    const slopes = gradient(g, u);
    if (value === undefined || slopes === undefined) return 'the resistance beside the way to the limit is not known';
    const square = dot(slopes, slopes);
    if (!(square > 0)) return 'no stated input moves this criterion';
    const along = (dot(slopes, u) - value) / square;
    const target = slopes.map((slope) => along * slope);
    const way = target.map((each, index) => each - (u[index] ?? 0));
    if (length(way) < CLOSE * Math.max(1, length(u)) && Math.abs(value) < CLOSE * scale)
      return pointAt(u, slopes, atMiddle);
    const moved = shortened(g, u, way, value, (2 * length(u)) / Math.sqrt(square) + scale / square);
    if (moved === undefined) return 'no step nearer to the limit is found';
    u = moved;
  }
  return `not found in ${MOST_STEPS} steps`;
}

function pointAt(point: readonly number[], slopes: readonly number[], atMiddle: number): DesignPoint {
  const index = Math.sign(atMiddle) * length(point);
  const square = dot(slopes, slopes);
  return { index, probability: normalBelow(-index), point, shares: slopes.map((slope) => (slope * slope) / square) };
}

/** The longest of the halved steps that makes the merit smaller. */
function shortened(
  g: (u: readonly number[]) => number | undefined,
  u: readonly number[],
  way: readonly number[],
  value: number,
  penalty: number,
): number[] | undefined {
  const merit = (at: readonly number[], g_: number): number => dot(at, at) / 2 + penalty * Math.abs(g_);
  const before = merit(u, value);
  for (let share = 1; share > 1e-6; share /= 2) {
    const at = u.map((each, index) => each + share * (way[index] ?? 0));
    const there = g(at);
    if (there !== undefined && merit(at, there) <= before + Number.EPSILON * before) return at;
  }
  return undefined;
}

function gradient(g: (u: readonly number[]) => number | undefined, u: readonly number[]): number[] | undefined {
  const slopes: number[] = [];
  for (const index of u.keys()) {
    const beside = (way: number) => g(u.map((each, at) => (at === index ? each + way : each)));
    const [below, above] = [beside(-STEP), beside(STEP)];
    if (below === undefined || above === undefined) return undefined;
    slopes.push((above - below) / (2 * STEP));
  }
  return slopes;
}

function dot(one: readonly number[], other: readonly number[]): number {
  let sum = 0;
  for (const [index, each] of one.entries()) sum += each * (other[index] ?? 0);
  return sum;
}

function length(of: readonly number[]): number {
  return Math.sqrt(dot(of, of));
}
