/**
 * Second routes to the remaining-strength functions: plain searches over everything that the function says it has
 * searched, on numbers in any consistent units. Nothing of src/ is imported.
 */

export interface Point {
  readonly at: number;
  readonly loss: number;
}

/** The weakest sub-length, with the rupture share of the sound strength on it. */
export interface Weakest {
  readonly share: number;
  readonly from: number;
  readonly to: number;
  readonly area: number;
  readonly bulging: number;
}

/** Lost area between two points of the profile as a sum of rectangles and triangles over each span. */
function areaUnder(points: readonly Point[]): number {
  let area = 0;
  points.forEach((point, index) => {
    const next = points[index + 1];
    if (next === undefined) return;
    const low = Math.min(point.loss, next.loss);
    const rise = Math.max(point.loss, next.loss) - low;
    area += (next.at - point.at) * low + ((next.at - point.at) * rise) / 2;
  });
  return area;
}

/** Every pair of points, each with its own sum: the cube of the number of points, and no running totals to get wrong. */
function weakest(points: readonly Point[], wall: number, bulgingOf: (length: number) => number): Weakest {
  const all: Weakest[] = [];
  for (let i = 0; i < points.length; i++) {
    for (let j = i + 1; j < points.length; j++) {
      const piece = points.slice(i, j + 1);
      const [from, to] = [piece[0]?.at ?? 0, piece.at(-1)?.at ?? 0];
      const area = areaUnder(piece);
      const bulging = bulgingOf(to - from);
      const full = (to - from) * wall;
      all.push({ share: (full - area) / (full - area / bulging), from, to, area, bulging });
    }
  }
  return all.reduce((worst, candidate) => (candidate.share < worst.share ? candidate : worst));
}

/** The three-term bulging factor as the sum that PR-3-805 is remembered by, in half length and mean radius taken as D/2. */
export function threeTermBulging(diameter: number, wall: number, length: number): number {
  const c2 = (length / 2) ** 2;
  const Rt = (diameter / 2) * wall;
  const y = c2 / Rt;
  // z = L^2/(D t) = 2 c^2/(R t), so that 0.6275 z is 1.255 y and 0.003375 z^2 is 0.0135 y^2.
  return y > 25 ? 0.064 * y + 3.3 : Math.sqrt(1 + 1.255 * y - 0.0135 * y ** 2);
}

/** Effective area of a profile: failure pressure and the sub-length behind it. */
export function effectiveAreaByBruteForce(
  pipe: { readonly diameter: number; readonly wall: number; readonly flow: number },
  points: readonly Point[],
): Weakest & { readonly pressure: number } {
  const { diameter, wall, flow } = pipe;
  const found = weakest(points, wall, (length) => threeTermBulging(diameter, wall, length));
  return { ...found, pressure: (found.share * flow * wall) / (diameter / 2) };
}

/** Numerators of the API 579-1 polynomial over 10^14, from the constant up. */
const NUMERATORS = [
  100100000000000n,
  -1419500000000n,
  29090000000000n,
  -9642000000000n,
  2089000000000n,
  -305400000000n,
  29570000000n,
  -1846200000n,
  71553000n,
  -1563100n,
  14656n,
];

/** The API 579-1 bulging factor of a cylinder in whole-number arithmetic: lambda is taken to 15 decimals. */
export function api579BulgingExactly(lambda: number): number {
  const one = 10n ** 15n;
  const l = BigInt(Math.round(Math.min(lambda, 20) * 1e9)) * 10n ** 6n;
  let power = one ** 10n;
  let sum = 0n;
  for (const numerator of NUMERATORS) {
    sum += numerator * power;
    power = (power * l) / one;
  }
  // sum is over 10^14 and one^10; 20 digits of the quotient are kept before it becomes a float.
  return Number((sum * 10n ** 20n) / (10n ** 14n * one ** 10n)) / 1e20;
}

/** API 579-1 Level 2 profile: remaining strength factor and the sub-length behind it. */
export function localMetalLossByBruteForce(
  shell: { readonly bore: number; readonly wall: number },
  points: readonly Point[],
): Weakest {
  const { bore, wall } = shell;
  return weakest(points, wall, (length) => api579BulgingExactly(Math.sqrt((1.651225 * length ** 2) / (bore * wall))));
}

/** Safe pressure of the 1991 manual over the pressure of the sound pipe. */
function manualShare(x: number, A: number): number {
  const share = A > 4 ? 1 - x : (1 - (2 * x) / 3) / (1 - (2 * x) / 3 / Math.hypot(A, 1));
  return Math.min(1.1 * share, 1);
}

/** Halves a span, keeping the part where `passes` turns from true to false. */
function lastThatPasses(passes: (value: number) => boolean, low: number, high: number): number {
  let [good, bad] = [low, high];
  for (let n = 0; n < 200; n++) {
    const middle = (good + bad) / 2;
    if (passes(middle)) good = middle;
    else bad = middle;
  }
  return good;
}

export interface ManualJob {
  readonly design: number;
  readonly operating: number;
  readonly diameter: number;
  readonly wall: number;
}

/** Longest loss of the 1991 manual: lengths are tried until the safe pressure falls below the operating pressure. */
export function allowableLengthBySearch({ design, operating, diameter, wall }: ManualJob, depth: number): number {
  const passes = (length: number): boolean =>
    design * manualShare(depth / wall, (0.893 * length) / Math.sqrt(diameter * wall)) >= operating;
  if (passes(1000 * diameter)) return Number.POSITIVE_INFINITY;
  return lastThatPasses(passes, 0, 1000 * diameter);
}

/** Deepest loss of the 1991 manual, by the same search over the depth up to 0.8 of the wall. */
export function allowableDepthBySearch({ design, operating, wall }: Omit<ManualJob, 'diameter'>, A: number): number {
  const passes = (depth: number): boolean => design * manualShare(depth / wall, A) >= operating;
  return passes(0.8 * wall) ? 0.8 * wall : lastThatPasses(passes, 0, 0.8 * wall);
}

export interface SlotJob {
  readonly diameter: number;
  readonly wall: number;
  readonly flow: number;
  readonly pressure: number;
}

/** Whether a through-wall slot tears open: the bulged stress, M times the hoop stress, has come up to the flow stress. */
export function slotTears({ diameter, wall, flow, pressure }: SlotJob, length: number): boolean {
  return threeTermBulging(diameter, wall, length) * pressure * diameter >= 2 * flow * wall;
}

/** Highest pressure at which a slot does not tear, by halving between none and that of the flow stress in the sound wall. */
export function slotPressureBySearch(job: Omit<SlotJob, 'pressure'>, length: number): number {
  const sound = (2 * job.flow * job.wall) / job.diameter;
  return lastThatPasses((pressure) => !slotTears({ ...job, pressure }, length), 0, sound);
}

/** Longest slot that does not tear, by halving. */
export function criticalLengthBySearch(job: SlotJob): number {
  return lastThatPasses((length) => !slotTears(job, length), 0, 1e4 * job.diameter);
}

/**
 * Axial failure stress over the flow stress of a pipe with the share `left` of its wall over a half angle up to `widest` of
 * the recalled form: the least over 20 000 half angles.
 */
export function weakestWidthBySearch(left: number, widest: number): number {
  const lost = 1 - left;
  let least = 1;
  for (let part = 0; part <= 20_000; part++) {
    const b = (widest * part) / 20_000;
    const sound = Math.PI - lost * b;
    least = Math.min(least, sound / (Math.PI + (2 * lost * Math.sin(b)) / left));
  }
  return least;
}

/**
 * Axial stress over the flow stress at which a thin ring with a gap is fully plastic under a pull in its middle: the ring
 * in small pieces, each at plus or minus one, the place where they change sides sought so that nothing turns.
 */
export function gappedRingSummed(halfAngle: number, pieces = 200_000): number {
  const step = (Math.PI - halfAngle) / pieces;
  const at = (piece: number): number => halfAngle + (piece + 0.5) * step;
  const momentWith = (pulled: number): number => {
    let moment = 0;
    for (let piece = 0; piece < pieces; piece++) moment += (piece < pulled ? 1 : -1) * Math.cos(at(piece)) * step;
    return moment;
  };
  // Pieces next to the gap pull, those across from it push; with more that pull the moment about the middle falls.
  let [low, high] = [Math.floor(pieces / 2), pieces];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (momentWith(middle) > 0) low = middle;
    else high = middle;
  }
  return ((2 * low - pieces) * step) / Math.PI;
}
