/**
 * Integral of a smooth function by adaptive Simpson with Richardson's correction.
 *
 * @param tolerance absolute error aimed at; halved with each split of the span, and never finer than float64 can tell
 * @returns NaN when the function, an end or the tolerance is not a number
 */
export function integrate(f: (x: number) => number, from: number, to: number, tolerance: number): number {
  if (Number.isNaN(tolerance)) return Number.NaN;
  const [fa, fm, fb] = [f(from), f((from + to) / 2), f(to)];
  return refine(f, from, to, fa, fm, fb, simpson(from, to, fa, fm, fb), tolerance, 48);
}

function simpson(a: number, b: number, fa: number, fm: number, fb: number): number {
  return ((b - a) / 6) * (fa + 4 * fm + fb);
}

function refine(
  f: (x: number) => number,
  a: number,
  b: number,
  fa: number,
  fm: number,
  fb: number,
  whole: number,
  tolerance: number,
  depth: number,
): number {
  const m = (a + b) / 2;
  const [fl, fr] = [f((a + m) / 2), f((m + b) / 2)];
  const left = simpson(a, m, fa, fl, fm);
  const right = simpson(m, b, fm, fr, fb);
  const gap = left + right - whole;
  const aim = Math.max(15 * tolerance, Number.EPSILON * (Math.abs(left) + Math.abs(right)));
  // Written so that NaN ends the search.
  if (depth === 0 || !(Math.abs(gap) > aim)) return left + right + gap / 15;
  return (
    refine(f, a, m, fa, fl, fm, left, tolerance / 2, depth - 1) +
    refine(f, m, b, fm, fr, fb, right, tolerance / 2, depth - 1)
  );
}
