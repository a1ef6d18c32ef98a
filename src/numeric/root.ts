/** A root, with what is left of the function there and the bracket that holds it. */
export interface Root {
  readonly root: number;
  readonly residual: number;
  readonly bracket: readonly [low: number, high: number];
}

/**
 * The root of a continuous function between two points where its signs differ, by bisection to the last bit.
 * Bisection needs about 60 evaluations and cannot miss; the functions solved here cost nanoseconds.
 *
 * @returns `undefined` when the ends are out of order or not finite, when the function has the same sign at both, or when
 *   it is not a number somewhere on the way
 */
export function bisect(f: (x: number) => number, low: number, high: number): Root | undefined {
  if (!(low <= high) || !Number.isFinite(high - low)) return undefined;
  let [a, b] = [low, high];
  let fa = f(a);
  const fb = f(b);
  if (fa === 0) return { root: a, residual: 0, bracket: [a, a] };
  if (fb === 0) return { root: b, residual: 0, bracket: [b, b] };
  if (!Number.isFinite(fa) || !Number.isFinite(fb) || fa > 0 === fb > 0) return undefined;
  for (;;) {
    const middle = a + (b - a) / 2;
    if (middle <= a || middle >= b) return closest(f, a, b);
    const fm = f(middle);
    if (Number.isNaN(fm)) return undefined;
    if (fm === 0) return { root: middle, residual: 0, bracket: [a, b] };
    if (fm > 0 === fa > 0) [a, fa] = [middle, fm];
    else b = middle;
  }
}

function closest(f: (x: number) => number, a: number, b: number): Root {
  const [fa, fb] = [f(a), f(b)];
  return Math.abs(fa) <= Math.abs(fb)
    ? { root: a, residual: fa, bracket: [a, b] }
    : { root: b, residual: fb, bracket: [a, b] };
}
